package titleline

import "testing"

func TestIsRemark(t *testing.T) {
	for text, is := range map[string]bool{
		"printed for Nigel":                true,
		"drawn by Ann, 3 May":              true,
		"checked against the old gate":     true,
		"geprüft gegen Altbestand":         true,
		"built on the long bench":          true,
		"all wire AS22759/32":              true,
		"built in radio":                   false,
		"Stand 04.02., gez. Brandl":        true,
		"gez. Huber":                       true,
		"Lista para el montaje del sábado": true,
		"Liste pour l'atelier":             true,
		"Sat. Rain again.":                 true,
		"tues night":                       true,
		"ring dave re crimps":              true,
		"ask Tom about the crimps":         true,
		"get more 22 vio":                  true,
		"to buy: 3 m of sleeve":            false, // below a table
		"all awg":                          true,
		"alle Maße in mm":                  true,
		"afgedrukt voor Joop":              true,
		"imprimé pour Luc":                 true,
		"stampato per Gino":                true,
		"12.03.2026":                       true,
		"KL 12/03/26":                      true,
		"uwaga: brak dwóch pinów":          true,
		"Sun roof":                         false,
		"Sat nav":                          false,
		"Call button":                      false,
		"Ring main unit":                   false,
		"Order desk plug":                  false,
		"List for plug A":                  false,
		"Liste für Stecker X1":             false,
		"Printed board":                    false,
		"Stand light plug":                 false,
		"Test bench":                       false,
		"Check valve for pump":             false,
		"Data 2":                           false, "AS 5": false, "Rev C": true, "Check the pins twice": true, "State 2": false,
		"Index plug":             false,
		"Bulkhead plug (14 way)": false,
		"Print for X4":           false,
		"Water pump":             false,
		"Dash ECU":               false,
		"All wheel drive unit":   false,
		"Return line sensor":     false,
		"Page turner":            false,
	} {
		if IsRemark(text) != is {
			t.Errorf("%q: %v", text, !is)
		}
	}
}

func TestNames(t *testing.T) {
	for text, is := range map[string]bool{
		"mast base plug":                      true,
		"Bulkhead plug (14 way), engine side": true,
		"Pasamuros P1 (12 pines)":             true,
		"prise feux arrière":                  true,
		"Spina pedana":                        true,
		"Stecker Licht":                       true,
		"12 way grey connector":               false,
		"view on the plug":                    false,
		"HEADER HARNESS 30FT":                 false,
		"plug for the fan is not fitted":      false,
		"Heron ECU":                           false,
		"connector":                           false,
	} {
		if Names(text) != is {
			t.Errorf("%q: %v", text, !is)
		}
	}
}

func TestBeforeRemark(t *testing.T) {
	front, remark := BeforeRemark("Mast plug (9 way), port side. Letters are moulded in.")
	if front != "Mast plug (9 way), port side" || remark != "Letters are moulded in." {
		t.Errorf("%q %q", front, remark)
	}
	for _, text := range []string{"Mast plug. ", ". ", ""} {
		if _, remark := BeforeRemark(text); remark != "" {
			t.Errorf("%q: %q", text, remark)
		}
	}
	if _, remark := BeforeRemark("Hatch no. 3 plug"); remark != "" {
		t.Errorf("%q", remark)
	}
}

func TestPiece(t *testing.T) {
	for text, want := range map[string]string{
		"Carousel - Bulkhead P3 (8 way)":                 "Bulkhead P3",
		"SPRAYER - rate controller plug (the round one)": "rate controller plug",
		"J1 - ECU plug":                     "",
		"Carousel - swing plug - gate plug": "",
		"Swing boat - mast":                 "",
	} {
		if got := Piece(text); got != want {
			t.Errorf("%q: %q", text, got)
		}
	}
}
