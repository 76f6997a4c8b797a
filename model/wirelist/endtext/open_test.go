package endtext

import "testing"

// What is done with an end that goes nowhere is no place; a coil, a cap or a device of such a name is one.
func TestSaysOpen(t *testing.T) {
	for _, s := range []string{"coil 300 mm, sleeve", "coil 300mm", "aufrollen, 300 mm", "coil up behind panel", "tie back", "Cap and stow",
		"fold back, tape", "taped 300 mm",
		"300 mm coiled", "300 mm aufrollen", "Isolieren und zurückbinden", "leave 12 in long", "tape off", "isoler et replier",
		"not joined at the sensor end", "left open at the tail",
		"filo sciolto, isolato in fondo al quadro", "Ader isoliert im Kanal", "fil isolé, en goulotte", "wire coiled behind the panel"} {
		if !SaysOpen(s) {
			t.Errorf("%q is taken for a place", s)
		}
	}
	for _, s := range []string{"Coil 85",
		"coil 1 +", "Ignition coil", "Cap C3", "Left motor", "Seal switch 2", "Tape head", "Roll sensor A", "Park lamp",
		"Free wheel 1", "Spare relay 87", "300 mm board", "Tie point 4", "Leave switch", "Fold motor",
		"Wire feeder 2", "Cable drum", "Lead screw motor", "End switch", "Core pump +"} {
		if SaysOpen(s) {
			t.Errorf("%q is taken for an open end", s)
		}
	}
}
