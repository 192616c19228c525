check-template-gap = There is a place inside the outline of the vehicle that no panel covers. Neighboring panels should use the same named points, so that the curve between them is stored once.
check-job-place = Places are in millimeters on the map: along the vehicle from its foremost point, and across from the centerline.
check-job-size = A job can give length, width and height of its vehicle in millimeters, without mirrors. One of them is too small or too large for any vehicle; perhaps it is in another unit.
check-template-size = Length, width or height of the vehicle is outside what a vehicle can be. They are given in millimeters.
check-template-stance = A place to stand lies inside the body, too near to it, or too far away to reach a panel. Places are given on the floor, in mm rearward from the front of the vehicle and outward from its centerline.
check-film-single-stage = The panel is noted as single-stage, or shows what single-stage paint shows. Such paint has no clear: color on a white pad is the paint itself (common practice, no source). Try a hidden place before choosing a step.
check-centre-no-side = the center is no side
check-place-number-do = give the place in millimeters on the map, as (x, y)
