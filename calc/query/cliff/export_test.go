package cliff_test

import "contralay/calc/query/cliff"

var untubed = cliff.Untubed
