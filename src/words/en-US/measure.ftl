measure-magnetic-on-aluminium = a magnetic gauge reads on steel only; on aluminum an eddy current gauge is needed
measure-eddy-on-carbon = carbon fiber conducts, so an eddy current reading means nothing there
measure-mirror-do = compare color and texture of both; one was probably painted again or rubbed thin
