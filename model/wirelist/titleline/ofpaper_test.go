package titleline

import "testing"

func TestIsOfPaper(t *testing.T) {
	for text, want := range map[string]bool{
		"Project Heron": true, "Project: Heron": true, "Projekt Reiher rev C": true, "Customer: Smith": true, "Kunde : Meier": true,
		"Fahrzeug: Unimog 406": true, "Véhicule : camionnette": true, "Drawing no. 4471-2": true, "Zeichnung Nr. 12": true,
		"Order 4471 - Jansen":         true,
		"Heron 12/03/2024 J. Smith":   true,
		"Client: Dupont - prise feux": false, "Customer plug": false, "Vehicle": false, "Plug A: pump": false, "Car radio": false,
		"Machine light": false, "X4 12/03/2024 Smith": false, "Project plug A": false, "Drawing board lamp": false,
		"Boat: tail plug": false,
	} {
		if got := IsOfPaper(text); got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

func TestOfHeading(t *testing.T) {
	for _, c := range [][3]string{
		{"Race boat - ECU outputs", "ECU", "ECU"},
		{"Milk float: ECU", "ECU", "ECU"},
		{"PDM CHANNEL LIST", "PDM", "PDM"},
		{"Milchwagen - SPS Ausgänge", "SPS", "SPS"},
		{"ECU outputs", "ECU", "ECU"},
		{"Fuse board FB2", "Fuse", "Fuse board FB2"},
		{"Milk float - ECU plug B", "ECU", "ECU plug B"},
		{"J4 - ECU", "ECU", "J4 - ECU"},
		{"Milk float", "ECU", "Milk float"},
		{"Autopilot to ESCs", "Autopilot", "Autopilot"},
		{"SPS zu den Ventilen", "SPS", "SPS"},
		{"Auto to manual box", "Autopilot", "Auto to manual box"},
	} {
		if got, _ := OfHeading(c[0], c[1]); got != c[2] {
			t.Errorf("%q above %q: %q", c[0], c[1], got)
		}
	}
}

func TestPieceOfTwo(t *testing.T) {
	for text, want := range map[string]string{
		"SPRAYER - rate controller plug (round)": "rate controller plug",
		"Rally car - Schott P1":                  "Schott P1",
		"Works tram: dash plug":                  "dash plug",
		"Works tram, dash plug":                  "dash plug",
		"Works tram / ECU plug B":                "ECU plug B",
		"Floor bulkhead 12 way: works tram":      "Floor bulkhead",
		"Unimog - Kombi (16-polig)":              "Kombi",
		"Tractor: tableau de bord 16 voies":      "tableau de bord",
		"Deck plug, grey":                        "",
		"Hub, left plug":                         "",
		"ECU: plug B":                            "",
		"X4 - tail plug":                         "",
		"Davit: X1 - control plug":               "",
		"Works tram - 12 way":                    "",
		"Tail plug - nose plug":                  "",
	} {
		if got := Piece(text); got != want {
			t.Errorf("%q: %q", text, got)
		}
	}
	if got := Within("Port davit - control plug", "control plug"); got != "Port davit" {
		t.Errorf("%q", got)
	}
}

func TestViewAndDate(t *testing.T) {
	for text, want := range map[string]string{
		"Plug A (8 way), seen from the wire side:":       "Plug A (8 way)",
		"Stecker B (4-polig), Blick auf die Kabelseite":  "Stecker B (4-polig)",
		"Prise C (4 voies), vue côté fils :":             "Prise C (4 voies)",
		"Tail plug 12/03/2024":                           "Tail plug",
		"2024-03-12 tail plug":                           "tail plug",
		"Sketch of the bulkhead, seen from the cab side": "Sketch of the bulkhead, seen from the cab side",
		"Bulkhead plug, engine side":                     "Bulkhead plug, engine side",
		"Tail plug, view box lamp":                       "Tail plug, view box lamp",
	} {
		if got, _ := BeforeRemark(text); got != want {
			t.Errorf("%q: %q", text, got)
		}
	}
}
