// Package shield is what is done where a shield ends: how far before the contacts it may
// stop, how long its lead to ground may be, how many may share one, and the solder sleeve
// that joins the lead to it, which is the only solder in the harness.
package shield

import "contralay/model/unit"

// Limits of NASA-STD-8739.4 § 11.6, p. 56: from the end of the shield to the contacts,
// and of the lead that takes shields to ground; of a circuit that must be kept from noise
// less.
const (
	MostStrip          unit.Millimetre = 100
	MostStripSensitive unit.Millimetre = 20
	MostLead           unit.Millimetre = 190
	MostLeadSensitive  unit.Millimetre = 115
)

// MostShared is how many shields may share one ground lead. Source: the same paragraph:
// four conductors and one drain.
const MostShared = 4

// bodies are the five sizes of solder sleeve and the thickest cable each goes over. From
// memory of AS83519/1 and /2, whose bodies are those of one-piece solder splices.
var bodies = [...]unit.Millimetre{1.7, 2.7, 4.5, 6.0, 7.0}

// Sleeve is the size of the smallest solder sleeve that goes over a cable, 1 to 5; false
// for a cable that is thicker than any takes, or not known. The sizes are from memory.
func Sleeve(over unit.Millimetre) (size int, ok bool) {
	if !(over > 0) {
		return 0, false
	}
	for k, most := range bodies {
		if over <= most {
			return k + 1, true
		}
	}
	return 0, false
}
