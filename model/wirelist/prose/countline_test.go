package prose

import "testing"

// A line of counts names nothing; a name may have a number.
func TestIsCountLine(t *testing.T) {
	for _, s := range []string{"Pins used: 7 of 12", "7 of 12 pins used", "7/12 belegt", "Belegt: 7 von 12",
		"Number of ways: 24 (3 free)",
		"Voies utilisées : 7 sur 12", "Anzahl Adern: 9", "Total: 14", "Wires: 3 / 4", "Used 7 out of 12", "5 spare pins",
		"Contatti usati: 4 su 9"} {
		if !IsCountLine(s) {
			t.Errorf("%q is no line of counts", s)
		}
	}
	for _, s := range []string{"Terminal 5", "Spare 2", "X12", "Pin 3", "Number 4", "Terminals 1-20", "Plug 7 of the loom",
		"Slot 3", "12",
		"Free pins", "ECU connector B (black, 12 way)", "Pump 2 of 3", "Position 4/5 lamp"} {
		if IsCountLine(s) {
			t.Errorf("%q is a line of counts", s)
		}
	}
}
