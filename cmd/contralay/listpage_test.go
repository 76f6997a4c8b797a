package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"contralay/model/wirelist/listtest"
)

// threeSheets is a workbook of which the middle sheet is an old copy that nobody wants.
func threeSheets(t *testing.T) string {
	t.Helper()
	sheet := func(name string, rows ...string) string {
		text := ""
		for _, r := range rows {
			text += "<table-row><table-cell><p>" + strings.ReplaceAll(r, ",", "</p></table-cell><table-cell><p>") +
				"</p></table-cell></table-row>"
		}
		return `<table name="` + name + `">` + text + "</table>"
	}
	return string(listtest.Packed(t, listtest.OpenDocument(sheet("Nose", "Pin,Signal,Colour", "1,Feed,red", "2,Ground,black")+
		sheet("Old nose", "Pin,Signal,Colour", "1,Horn,blue", "2,Lamp,white", "3,Siren,grey")+
		sheet("Tail", "Pin,Signal,Colour", "4,Feed,red", "5,Ground,black", "6,Brake,yellow"))))
}

// What a list was read wrong in is put right in twelve keys or fewer, on a screen of 80 x 24.
func TestListPutRight(t *testing.T) {
	for _, c := range []struct {
		name, file, text string
		before           string   // on the screen of the list, wrong
		keys             []string // that put it right
		after            []string // on the screen after them
		gone             string   // from the screen of the list after them
	}{
		{"without headings", "bare.csv", "1,Fuel pump +,16\n2,Fuel pump -,18\n3,Level sense,22\n4,Level ground,24\n",
			"wire without size", []string{down, enter, "3", enter, "1", "0", enter},
			[]string{"column #3", "is  gauge", "4 wires"}, "wire without size"},
		{"three sheets", "book.ods", threeSheets(t), "3 ends, 6 wires", []string{down, down, down, "."},
			[]string{"Old nose: left out", "2 ends, 3 wires"}, "3 ends"},
		{"misread column", "plug.csv", "Pin,Signal,Colour,Typ\n1,Pump,red,2.5\n2,Return,black,2.5\n3,Level,white,0.5\n",
			"wire without size", []string{down, enter, "4", enter, "1", "0", enter}, []string{"Typ", "is  gauge"},
			"wire without size"},
		{"connector to be named", "list.csv", "Pin,Signal,Colour,AWG\n1,Feed,red,20\n2,Ground,black,20\n", "list:1",
			[]string{down, enter, down, down, enter, "P", "9", enter}, []string{"connector  P9", "P9:1 to open"}, "list:1"},
	} {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			if len(c.keys) > 12 {
				t.Fatalf("%d keys", len(c.keys))
			}
			dir := t.TempDir()
			list, board := filepath.Join(dir, c.file), filepath.Join(dir, "loom.toml")
			if err := os.WriteFile(list, []byte(c.text), 0o600); err != nil {
				t.Fatal(err)
			}
			if r := call(t, "", "new", board); r.code != ok {
				t.Fatal(r.err)
			}
			s := start(t, 80, 24, nil, board)
			s.see("An empty board")
			s.toRow("import a wire list")
			s.changed(enter)
			s.changed("/")
			s.press(list)
			s.settle()
			s.press(enter)
			s.see("Nothing is changed yet", c.before)
			for _, k := range c.keys {
				s.changed(k)
			}
			s.see(c.after...)
			if !strings.Contains(s.text(), "WIRE LIST") {
				s.press(esc)
			}
			s.until("the list without "+c.gone, func(screen string) bool {
				return strings.Contains(screen, "WIRE LIST") && strings.Contains(screen, "take it") && !strings.Contains(screen, c.gone)
			})
		})
	}
}
