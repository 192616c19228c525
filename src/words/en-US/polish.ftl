polish-single-stage = single-stage paint has no clear: color on the pad is the paint itself, so stay with the finest step that works
polish-fate-levelled = { $defects } will be leveled by hand, if asked for
polish-helps-level-locally = it stands proud and is leveled by hand in its place only
