package lists_test

import (
	"os"
	"slices"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/wirelist/listtest"
	wirelistname "contralay/model/wirelist/name"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/lists"
)

// listed is a bench with a list open.
func listed(t *testing.T, file, text string) *desk.Model {
	t.Helper()
	m := benchtest.Open(t, "example.toml")
	m.Cfg.ListBytes = func(string) ([]byte, error) { return []byte(text), nil }
	if err := taken(m, file); err != nil {
		t.Fatal(err)
	}
	return m
}

// onto puts the cursor on the row with some words, by the arrow alone.
func onto(t *testing.T, m *desk.Model, words string) {
	t.Helper()
	row(t, m, words)
	benchtest.Press(m, "home")
	for range 60 {
		if _, r := m.Hand(); r != nil && (strings.Contains(r.Line(), words) || strings.HasPrefix(r.Key, words)) {
			return
		}
		benchtest.Press(m, "down")
	}
	t.Fatalf("%q is not reached:\n%s", words, benchtest.View(m))
}

// wireOf is the wire that ends at a cavity.
func wireOf(m *desk.Model, end string) (found model.Wire, ok bool) {
	for _, w := range lists.Taking(m).H.Wires {
		if w.From.V == end || w.To.V == end {
			return w, true
		}
	}
	return found, false
}

// + reads a table as the next best, . leaves it out, and Backspace takes back either; the harness behind it stays.
func TestNextBestReading(t *testing.T) {
	m := listed(t, "P1.csv", "Pin,Signal,Colour\n1,Feed,red\n2,Ground,black\n3,Pump,violet\n")
	was := m.H
	if n := len(lists.Taking(m).H.Wires); n != 3 {
		t.Fatalf("%d wires", n)
	}
	first := row(t, m, " table ").Line()
	onto(t, m, " table ")
	benchtest.Press(m, "+")
	if r := row(t, m, " table "); r.Line() == first || !strings.Contains(r.Line(), "no wires") {
		t.Errorf("+ leaves %q", r.Line())
	}
	if in := lists.Taking(m); in.Err == nil || len(in.H.Wires) != 0 {
		t.Errorf("%d wires of a text", len(in.H.Wires))
	}
	benchtest.Press(m, "backspace")
	if row(t, m, " table ").Line() != first || len(lists.Taking(m).H.Wires) != 3 || m.H != was {
		t.Errorf("it is not back:\n%s", benchtest.View(m))
	}
	benchtest.Press(m, ".")
	if lists.Taking(m).Err == nil || !strings.Contains(row(t, m, " table ").Line(), "left out") {
		t.Errorf(". leaves it in:\n%s", benchtest.View(m))
	}
	benchtest.Press(m, ".")
	if len(lists.Taking(m).H.Wires) != 3 || len(lists.Taking(m).Recipe.Tables) != 0 {
		t.Errorf("it is not in again:\n%s", benchtest.View(m))
	}
	// On its page the reading that comes next stands below the one that is taken, and Enter takes it.
	benchtest.Press(m, "enter")
	next := strings.TrimSpace(strings.TrimPrefix(row(t, m, "next reading").Line(), "  or"))
	onto(t, m, "next reading")
	benchtest.Press(m, "enter")
	if is := row(t, m, "reading").Line(); !strings.HasSuffix(is, next) {
		t.Errorf("took %q, is %q", next, is)
	}
}

// Beside each row stands what it becomes; a row is left out by ., and is the headings by Enter.
func TestRowsOfATable(t *testing.T) {
	m := listed(t, "P1.csv", "Pin,Signal,Colour\n1,Feed,red\n2,Ground,black\n3,Pump,violet\n")
	openTable(t, m, 0)
	if r := row(t, m, "row 3"); !strings.Contains(r.Line(), "P1:2") || !strings.Contains(r.Line(), "Ground") {
		t.Errorf("%q", r.Line())
	}
	onto(t, m, "row 3")
	benchtest.Press(m, ".")
	if _, there := wireOf(m, "P1:2"); there || len(lists.Taking(m).H.Wires) != 2 {
		t.Error("the row is still read")
	}
	if r := row(t, m, "row 3"); !strings.HasSuffix(r.Line(), "left out") {
		t.Errorf("%q", r.Line())
	}
	benchtest.Press(m, "backspace")
	if w, there := wireOf(m, "P1:2"); !there || w.Signal.V != "Ground" {
		t.Error("the row is not back")
	}
}

// Lines without headings are given some by the reader: those are no row of the list, and the first line becomes its wire.
func TestRowsBelowMadeHeadings(t *testing.T) {
	m := listed(t, "box.txt", "pump box TB1\n\nTB1-1  red 14awg  feed > PSU +\nTB1-2  blk 14awg  common > PSU -\n"+
		"TB1-3  brn 18awg  low float > float switch 1\n")
	openTable(t, m, 0)
	for key, want := range map[string]string{"row 3": "TB1:1", "row 4": "TB1:2", "row 5": "TB1:3"} {
		if r := row(t, m, key); !strings.Contains(r.Line(), want) || strings.HasSuffix(r.Line(), "headings") {
			t.Errorf("%q", r.Line())
		}
	}
	if r := row(t, m, "row 1"); !strings.HasSuffix(r.Line(), "above the table") {
		t.Errorf("%q", r.Line())
	}
}

// Words that no vocabulary has are the headings once a person says so, and their columns mean what a person says.
func TestHeadingsByHand(t *testing.T) {
	m := listed(t, "P1.csv", "Loom of the pump,,\nQx,Vz,Wk\n1,Feed,red\n2,Ground,black\n3,Pump,violet\n")
	openTable(t, m, 0)
	onto(t, m, "row 2")
	if strings.HasSuffix(row(t, m, "row 2").Line(), "headings") {
		benchtest.Press(m, "enter") // not so: take it away first
	}
	benchtest.Press(m, "enter")
	if r := row(t, m, "row 2"); !strings.HasSuffix(r.Line(), "headings") {
		t.Fatalf("%q:\n%s", r.Line(), benchtest.View(m))
	}
	for n, f := range []wirelistname.Field{wirelistname.FieldPin, wirelistname.FieldSignal, wirelistname.FieldColour} {
		onto(t, m, "column "+[]string{"Qx", "Vz", "Wk"}[n])
		benchtest.Press(m, "enter")
		for _, c := range []byte(fieldNumber(f)) {
			benchtest.Press(m, string(c))
		}
		benchtest.Press(m, "enter")
	}
	if n := len(lists.Taking(m).H.Wires); n != 3 {
		t.Fatalf("%d wires:\n%s", n, benchtest.View(m))
	}
	for _, w := range lists.Taking(m).H.Wires {
		if w.Signal.V == "Feed" && w.Colour.V == "" || w.Signal.V == "Qx" || w.Signal.V == "Vz" {
			t.Errorf("%+v", w)
		}
	}
}

// fieldNumber is the number of a meaning in the list of them.
func fieldNumber(f wirelistname.Field) string {
	n := slices.Index(wirelistname.Fields(), f) + 1
	if n < 10 {
		return string(rune('0' + n))
	}
	return string([]rune{rune('0' + n/10), rune('0' + n%10)})
}

// The connector of a table is named, also over what its title says; the name of another's makes them one.
func TestConnectorByHand(t *testing.T) {
	m := listed(t, "pump.csv", "Pump plug,,\nPin,Signal,Colour\n1,Feed,red\n2,Ground,black\n,,\n"+
		"Lamp plug,,\nPin,Signal,Colour\n3,Lamp,red\n4,Horn,black\n")
	if n := len(lists.Taking(m).H.Terminations); n != 2 {
		t.Fatalf("%d connectors", n)
	}
	for n := range 2 {
		openTable(t, m, n)
		if err := row(t, m, "connector").Field.Set(m, "P9"); err != nil {
			t.Fatal(err)
		}
		benchtest.Press(m, "esc")
	}
	h := lists.Taking(m).H
	if len(h.Terminations) != 1 || h.Terminations[0].ID != "P9" {
		t.Errorf("%+v", h.Terminations)
	}
	if w, there := wireOf(m, "P9:4"); !there || w.Signal.V != "Horn" {
		t.Errorf("%+v", w)
	}
	openTable(t, m, 0)
	if err := row(t, m, "connector").Field.Set(m, "P\x079"); err == nil {
		t.Error("a control character was taken")
	}
}

// sheetOf is a sheet of an OpenDocument workbook, its rows with commas between the cells.
func sheetOf(name string, rows ...string) string {
	var b strings.Builder
	for _, r := range rows {
		b.WriteString("<table-row>")
		for _, c := range strings.Split(r, ",") {
			b.WriteString("<table-cell><p>" + c + "</p></table-cell>")
		}
		b.WriteString("</table-row>")
	}
	return `<table name="` + name + `">` + b.String() + "</table>"
}

// book is a workbook of three sheets: the cavities of two connectors, and an old copy of one.
func book(t *testing.T) string {
	t.Helper()
	return string(listtest.Packed(t, listtest.OpenDocument(sheetOf("Nose", "Pin,Signal,Colour", "1,Feed,red", "2,Ground,black")+
		sheetOf("Old nose", "Pin,Signal,Colour", "1,Horn,blue", "2,Lamp,white", "3,Siren,grey")+
		sheetOf("Tail", "Pin,Signal,Colour", "1,Feed,red", "2,Ground,black", "3,Brake,yellow"))))
}

// A sheet that is not wanted is left out by one key, and its wires go with it; Backspace brings it back.
func TestSheetLeftOut(t *testing.T) {
	m := listed(t, "book.ods", book(t))
	all := len(lists.Taking(m).H.Wires)
	onto(t, m, "sheet Old nose")
	benchtest.Press(m, ".")
	in := lists.Taking(m)
	if len(in.H.Terminations) != 2 || len(in.H.Wires) >= all || !slices.Equal(in.Recipe.Sheets, []string{"Old nose"}) {
		t.Errorf("%d connectors, %d wires of %d", len(in.H.Terminations), len(in.H.Wires), all)
	}
	for _, w := range in.H.Wires {
		if w.Signal.V == "Horn" || w.Signal.V == "Siren" {
			t.Errorf("wire %s is of the sheet that is left out", w.ID)
		}
	}
	benchtest.Press(m, "backspace")
	if in := lists.Taking(m); len(in.H.Wires) != all || len(in.Recipe.Sheets) != 0 {
		t.Errorf("%d wires of %d", len(in.H.Wires), all)
	}
}

// A sheet that its workbook does not show stays out until somebody says that it is read; the recipe keeps that.
func TestHiddenSheetRead(t *testing.T) {
	parts := listtest.OpenDocument(strings.Replace(sheetOf("Nose", "Pin,Signal,Colour", "1,Feed,red")+
		sheetOf("Old nose", "Pin,Signal,Colour", "1,Horn,blue", "2,Lamp,white"), `name="Old nose"`, `name="Old nose" style-name="away"`, 1))
	parts["content.xml"] = strings.Replace(parts["content.xml"], "<doc>",
		`<doc><style name="away"><table-properties display="false"/></style>`, 1)
	text := string(listtest.Packed(t, parts))
	m := listed(t, "book.ods", text)
	if n := len(lists.Taking(m).H.Wires); n != 1 {
		t.Fatalf("%d wires where the hidden sheet is not read", n)
	}
	onto(t, m, "hidden Old nose")
	benchtest.Press(m, "enter")
	in := lists.Taking(m)
	if len(in.H.Wires) != 3 || !slices.Equal(in.Recipe.Hidden, []string{"Old nose"}) || len(in.Found) != 2 {
		t.Errorf("%d wires, %q, %d tables", len(in.H.Wires), in.Recipe.Hidden, len(in.Found))
	}
	onto(t, m, "hidden Old nose")
	benchtest.Press(m, "enter")
	if n := len(lists.Taking(m).H.Wires); n != 1 || len(lists.Taking(m).Found) != 1 {
		t.Errorf("%d wires after it is left out again", n)
	}
}

// What was said of a list is kept, and reads its next revision the same, in one undo.
func TestRecipeKeptAndUsed(t *testing.T) {
	files := map[string]string{"a.csv": "Issue A,,\nQx,Vz,Wk\n1,Feed,red\n2,Ground,black\n",
		"b.csv": "Issue B,,\nQx,Vz,Wk\n1,Feed,red\n2,Ground,black\n3,Horn,blue\n"}
	m := listed(t, "x.csv", files["a.csv"])
	m.Cfg.ListBytes = func(path string) ([]byte, error) { return []byte(files[path]), nil }
	m.Cfg.WriteNew = func(path string, text []byte) error { files[path] = string(text); return nil }
	if err := taken(m, "a.csv"); err != nil {
		t.Fatal(err)
	}
	openTable(t, m, 0)
	for n, f := range []wirelistname.Field{wirelistname.FieldPin, wirelistname.FieldSignal} {
		for lists.Taking(m).Found[0].Reading().Block.Cols[n].Field != f {
			columnOf(t, m, []string{"Qx", "Vz"}[n]).Step(m, 1)
		}
	}
	if err := row(t, m, "connector").Field.Set(m, "P9"); err != nil {
		t.Fatal(err)
	}
	benchtest.Press(m, "esc")
	if err := row(t, m, "recipe").Field.Set(m, "kept.toml"); err != nil {
		t.Fatal(err)
	}
	if err := taken(m, "b.csv"); err != nil {
		t.Fatal(err)
	}
	before := len(lists.Taking(m).H.Wires)
	row(t, m, "use").Enter(m)
	asked := m.Entry
	m.Entry = nil
	if err := asked.Set(m, "kept.toml"); err != nil {
		t.Fatal(err)
	}
	if w, there := wireOf(m, "P9:3"); !there || w.Signal.V != "Horn" || len(lists.Taking(m).H.Wires) != 3 {
		t.Errorf("%+v:\n%s", w, benchtest.View(m))
	}
	benchtest.Press(m, "backspace")
	if n := len(lists.Taking(m).H.Wires); n != before || len(lists.Taking(m).Recipe.Tables) != 0 {
		t.Errorf("%d wires, before %d", n, before)
	}
	files["bad.toml"] = "tables = 1"
	if err := asked.Set(m, "bad.toml"); err == nil || len(lists.Taking(m).H.Wires) != before {
		t.Errorf("a broken recipe was taken: %v", err)
	}
}

// A table that a page break cut in two is one again, and parts again by Backspace.
func TestTablesJoined(t *testing.T) {
	m := listed(t, "P1.csv", "Plug,,\nPin,Signal,Colour\n1,Feed,red\n2,Ground,black\n\n"+
		"Page two,,\nPin,Signal,Colour\n3,Lamp,white\n4,Horn,blue\n")
	if n := len(lists.Taking(m).H.Terminations); n != 2 {
		t.Fatalf("%d connectors", n)
	}
	openTable(t, m, 1)
	onto(t, m, "joined")
	benchtest.Press(m, "enter")
	h := lists.Taking(m).H
	if len(h.Terminations) != 1 || len(h.Wires) != 4 {
		t.Fatalf("%d connectors, %d wires:\n%s", len(h.Terminations), len(h.Wires), benchtest.View(m))
	}
	if w, there := wireOf(m, h.Terminations[0].ID+":4"); !there || w.Signal.V != "Horn" {
		t.Errorf("%+v", h.Wires)
	}
	if r := row(t, m, "row 8"); !strings.Contains(r.Line(), ":3") {
		t.Errorf("%q", r.Line())
	}
	benchtest.Press(m, "backspace")
	if n := len(lists.Taking(m).H.Terminations); n != 2 {
		t.Errorf("%d connectors", n)
	}
	benchtest.Press(m, "esc")
	openTable(t, m, 0)
	for _, r := range m.Page(m.ListWidth()).Rows {
		if r.Key == "joined" {
			t.Error("the first table has none above it")
		}
	}
}

// Of two tables beside one another each shows what its own half of a row becomes, in the columns that hold something.
func TestTablesBesideOneAnother(t *testing.T) {
	data, err := os.ReadFile(benchtest.Path(t, "testdata/lists/kinds/21-side-by-side.xlsx"))
	if err != nil {
		t.Fatal(err)
	}
	m := listed(t, "wheels.xlsx", string(data))
	for n, own := range []string{":D0 ", ":D2 "} { // as the fourth row of the sheet has them
		openTable(t, m, n)
		r := row(t, m, "row 4").Line()
		if strings.Count(r, ":") != 1 || !strings.Contains(r, own) {
			t.Errorf("table %d: %q", n, r)
		}
		benchtest.Press(m, "esc")
	}
}

// A row that names the connector of the rows below it is shown as a heading, and not as a row that became nothing.
func TestConnectorInARowOfItsOwn(t *testing.T) {
	m := listed(t, "tug.csv", "Connector,Pin,Signal,Colour\nX1,,,\n,1,Feed,red\n,2,,black\n,3,not used,\n")
	openTable(t, m, 0)
	for of, want := range map[string]string{"row 2": "a heading", "row 3": "X1:1", "row 5": "no wire"} {
		if r := row(t, m, of).Line(); !strings.Contains(r, want) {
			t.Errorf("%s: %q does not say %q", of, r, want)
		}
	}
}
