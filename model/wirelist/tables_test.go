package wirelist_test

import (
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
)

// said imports a list with a recipe as its file has it.
func said(t *testing.T, recipe, list string) (model.Harness, report.Report) {
	t.Helper()
	r, err := name.DecodeRecipe("r.toml", []byte(recipe))
	if err != nil {
		t.Fatal(err)
	}
	tables, err := table.Read("list.csv", []byte(list), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, rep, err := wirelist.Import(tables, draft.Options{Recipe: &r})
	if err != nil {
		t.Fatal(err)
	}
	return h, rep
}

// tells reports whether a warning of a report has some words.
func tells(rep report.Report, level report.Level, words string) bool {
	for _, f := range rep.Findings {
		if f.Level == level && strings.Contains(f.String(), words) {
			return true
		}
	}
	return false
}

// What is said about a table holds for the next revision: with another date above it, more rows, and another table
// before it. What does not fit any more is told.
func TestRecipeOfATable(t *testing.T) {
	const recipe = `[[table]]
title = "Nose plug, issue A"
headings = "Nr | Was | Ton"
connector = "P9"
rows_left_out = ["3 Horn blue"]
[table.columns]
Nr = "pin"
Was = "signal"
Ton = "colour"
`
	h, rep := said(t, recipe, "\"Nose plug, issue B\",,\nNr,Was,Ton\n1,Feed,red\n2,Ground,black\n3,Horn,blue\n4,Lamp,white\n\n"+
		"Tail plug,,\nPin,Signal,Colour\n1,Brake,grey\n2,Fog,green\n")
	signals := map[string]string{}
	for _, w := range h.Wires {
		signals[w.From.V+w.To.V] = w.Signal.V
	}
	if signals["P9:1"] != "Feed" || signals["P9:2"] != "Ground" || signals["P9:4"] != "Lamp" || len(h.Wires) != 5 {
		t.Errorf("%v", signals)
	}
	if !tells(rep, report.Note, "row left out: 3 Horn blue") || tells(rep, report.Warn, "recipe") {
		t.Errorf("%v", rep.Findings)
	}
	_, rep = said(t, recipe, "\"Nose plug, issue B\",,\nNr,Was,Ton\n1,Feed,red\n2,Ground,black\n")
	if !tells(rep, report.Warn, "no row of it is 3 Horn blue") {
		t.Errorf("a row that is gone is not told: %v", rep.Findings)
	}
	_, rep = said(t, recipe, "Pin,Signal,Colour\n1,Feed,red\n2,Ground,black\n")
	if !tells(rep, report.Warn, "speaks of a table that is not here: Nose plug, issue A: Nr | Was | Ton") {
		t.Errorf("a table that is gone is not told: %v", rep.Findings)
	}
	_, rep = said(t, "[[table]]\nheadings = \"Pin | Signal | Colour\"\nread_as = \"a list of parts\"\n[table.columns]\nWeight = \"note\"\n",
		"Pin,Signal,Colour\n1,Feed,red\n2,Ground,black\n")
	if !tells(rep, report.Warn, "cannot be read as a list of parts") || !tells(rep, report.Warn, "no column of it is headed Weight") {
		t.Errorf("what does not fit is not told: %v", rep.Findings)
	}
}

// A table is said to go on with the one above it: where there is none, that is told and the table is read by itself.
func TestTableGoesOn(t *testing.T) {
	const recipe = "[[table]]\nheadings = \"Pin | Signal | Colour\"\ngoes_on = true\n"
	h, rep := said(t, recipe, "Pin,Signal,Colour\n1,Feed,red\n2,Ground,black\n")
	if len(h.Wires) != 2 || !tells(rep, report.Warn, "no table stands above it") {
		t.Errorf("%d wires: %v", len(h.Wires), rep.Findings)
	}
	h, rep = said(t, recipe, "Tail plug,,,\nPin,Signal,Colour,AWG\n7,Brake,grey,20\n8,Fog,green,20\n\n"+
		"Page two,,,\nPin,Signal,Colour,\n9,Horn,blue,\n10,Lamp,white,\n")
	if len(h.Terminations) != 1 || len(h.Wires) != 4 || !tells(rep, report.Note, "table joined to the one above it") ||
		!tells(rep, report.Note, "Page two") {
		t.Errorf("%d wires at %d connectors: %v", len(h.Wires), len(h.Terminations), rep.Findings)
	}
}

// Tables whose columns stand otherwise are not made one: no heading becomes a wire, no colour a name.
func TestTableGoesOnOtherwise(t *testing.T) {
	const list = "Tail plug,,\nPin,Signal,Colour\n7,Brake,grey\n8,Fog,green\n\nPage two,,\nColour,Pin,Signal\nblue,9,Horn\nwhite,10,Lamp\n"
	h, rep := said(t, "[[table]]\nheadings = \"Colour | Pin | Signal\"\ngoes_on = true\n", list)
	if len(h.Wires) != 4 || len(h.Terminations) != 2 || !tells(rep, report.Warn, "its headings are other ones") {
		t.Errorf("%d wires at %d connectors: %v", len(h.Wires), len(h.Terminations), rep.Findings)
	}
}

// One table left out leaves the other; where all are, the error says so. Two tables with the same headings and titles
// are told apart by their number.
func TestTableLeftOut(t *testing.T) {
	const list = "Plug,,\nPin,Signal,Colour\n1,Feed,red\n2,Ground,black\n\nPlug,,\nPin,Signal,Colour\n3,Brake,grey\n4,Fog,green\n"
	entry := func(n string) string {
		return "[[table]]\ntitle = \"Plug\"\nheadings = \"Pin | Signal | Colour\"\nnumber = " + n + "\nleft_out = true\n"
	}
	h, rep := said(t, entry("2"), list)
	for _, w := range h.Wires {
		if w.Signal.V == "Brake" || w.Signal.V == "Fog" {
			t.Errorf("%s is of the table that is left out", w.Signal.V)
		}
	}
	if len(h.Wires) != 2 || !tells(rep, report.Note, "table left out") {
		t.Errorf("%d wires: %v", len(h.Wires), rep.Findings)
	}
	r, err := name.DecodeRecipe("r.toml", []byte(entry("1")+entry("2")))
	if err != nil {
		t.Fatal(err)
	}
	tables, err := table.Read("list.csv", []byte(list), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	if _, _, err := wirelist.Import(tables, draft.Options{Recipe: &r}); err == nil || !strings.Contains(err.Error(), "is left out") {
		t.Errorf("%v", err)
	}
}

// A recipe may name a row of headings that is empty, or that has a text below it: then the list is read or refused like any other.
func TestEmptyRowOfHeadings(t *testing.T) {
	const list = "# Hull\n\nWhat goes where in it\n\n| Pin | Signal |\n|---|---|\n| 1 | Pump feed |\n| 2 | Pump ground |\n"
	tables, err := table.Read("list.md", []byte(list), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	for line := range 9 {
		r := &name.Recipe{HeaderRow: line}
		h, rep, err := wirelist.Import(tables, draft.Options{Recipe: r})
		if err == nil && len(h.Wires) > 0 && len(rep.Facts) == 0 || len(wirelist.Explain(tables, r)) == 0 {
			t.Errorf("headings in row %d: nothing is said", line)
		}
	}
}
