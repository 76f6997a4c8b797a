package stamped

import "testing"

// A line may begin with its day, its hour and a name; a cavity and its name are no such stamp.
func TestBehindStamp(t *testing.T) {
	for text, want := range map[string]string{
		"04 Mar  Ran engine.":           "Ran engine.",
		"2026-03-04 08:15 - wired":      "wired",
		"Mon 2 March: came aboard":      "came aboard",
		"04.03.2026  Maschine gelaufen": "Maschine gelaufen",
		"[18:03] Teo: yes":              "yes",
		"03.05.26, 08:12 - Ana: ready?": "ready?",
		"4 red 12 AWG":                  "",
		"X1:3 to X2:4, red":             "",
		"12 Mar":                        "",
		"Pin 4 to the lamp":             "",
		"1-2 to 3-4":                    "",
		"8:3 to 9:4":                    "",
	} {
		if got, ok := Behind(text); ok != (want != "") || ok && got != want {
			t.Errorf("%q: %q %v, want %q", text, got, ok, want)
		}
	}
}

// A line tells a wire where both ends have a cavity and something says its colour or its size.
func TestWireOf(t *testing.T) {
	for text, want := range map[string][6]string{
		"New wire: lift pump, from DB1 terminal 4 to LP1 pin 1, 2.5 mm2, red.": {"DB1:4", "LP1:1", "red", "2.5 mm2", "lift pump", ""},
		"dash plug pin 2 to relay pin 86. white 20awg. thats the fan":          {"dash plug:2", "relay:86", "white", "20awg", "fan", ""},
		"Horn: ran X1 pin 3 to P2 pin 4, blue, two clips":                      {"X1:3", "P2:4", "blue", "", "Horn", "two clips"},
		"is it X1 pin 3 to P2 pin 4, red?":                                     {},
		"went from town to harbour, red sky":                                   {},
		"X1 pin 3 to P2 pin 4 was there already":                               {},
	} {
		w, ok := wireOf(text)
		if got := [6]string{w.from, w.to, w.colour, w.size, w.signal, w.note}; ok != (want != [6]string{}) || ok && got != want {
			t.Errorf("%q: %+v %v, want %+v", text, got, ok, want)
		}
	}
}
