package over

import (
	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// hotMeltC is what hot melt stands all the time: a maker's specification of it, as tape and
// as a coat on shapes and tubing.
var hotMeltC = struct {
	c unit.Celsius
	catalogue.Origin
}{90, catalogue.Origin{Source: "a maker's hot-melt specification", Standing: catalogue.Published}}

// AdhesiveC is what the adhesive stands: as the file says, else as its kind does.
func AdhesiveC(s *sheet.Sheet) (unit.Celsius, catalogue.Origin, bool) {
	switch {
	case s.Limits.AdhesiveC.Set:
		return s.Limits.AdhesiveC.V, catalogue.Origin{Source: "given in the file", Standing: catalogue.House}, true
	case s.Limits.Adhesive == "hot melt":
		return hotMeltC.c, hotMeltC.Origin, true
	}
	return 0, catalogue.Origin{}, false
}
