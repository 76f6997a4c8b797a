package stripname

import "testing"

func TestStripsInTitles(t *testing.T) {
	for title, want := range map[string][2]string{
		"Coop fan panel - regletero X1":       {"X1", "Coop fan panel"},
		"Regletero X1 - coop fan panel":       {"X1", "coop fan panel"},
		"Klemmenleiste -X1":                   {"X1", ""},
		"Klemmenstrook KS4 (put)":             {"KS4", "put"},
		"Coffret C2, bornier XB":              {"XB", "Coffret C2"},
		"Régua de bornes X1":                  {"X1", ""},
		"Rozdzielnica - listwa zaciskowa X2":  {"X2", "Rozdzielnica"},
		"Coop fan panel terminal strip X1":    {"X1", "Coop fan panel"},
		"Coop fan panel - X1":                 {"X1", "Coop fan panel"},
		"Coop fan panel - X1 terminals":       {"X1", "Coop fan panel"},
		"Coop fan panel – plint 1":            {"plint 1", "Coop fan panel"},
		"Coop fan panel - rev B":              {},
		"Coop fan panel - V2":                 {}, // a version
		"Loom to bornier X1":                  {}, // where a cable goes
		"Terminal strip X1, X2":               {}, // two
		"Terminal strip X1 to terminal strip": {},
		"J1 - X1":                             {}, // from one to the other
		"Terminal strip wiring":               {},
		"The old terminal strip X1 is gone":   {},
		"Terminal strip X1 is gone":           {},
		"Regleta X1 cuadro principal":         {"X1", "cuadro principal"},
		"Klemmenstrook X1 rev B":              {"X1", "rev B"},
		"Klemmenlijst X1 - schakelkast SM3":   {"X1", "schakelkast SM3"},
		"Terminal strip X1 - X2 in the coop":  {},
		"Bornier":                             {},
		"":                                    {},
	} {
		if called, more := In(title); called != want[0] || more != want[1] {
			t.Errorf("%q: %q and %q, want %q", title, called, more, want)
		}
	}
}
