package lists_test

import (
	"errors"
	"os"
	"slices"
	"strings"
	"testing"

	wirelistname "contralay/model/wirelist/name"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/lists"
)

// taken takes in a list by its name: no files can be listed here, so the row asks for one.
func taken(m *desk.Model, name string) error {
	lists.ImportRow(m).Enter(m)
	asked := m.Entry
	m.Entry = nil
	return asked.Set(m, name)
}

// row is a row of the page in front, by its key or what stands in it.
func row(t *testing.T, m *desk.Model, key string) *desk.Row {
	t.Helper()
	p := m.Page(m.ListWidth())
	for _, by := range []func(r *desk.Row) bool{func(r *desk.Row) bool { return strings.HasPrefix(r.Key, key) },
		func(r *desk.Row) bool { return strings.Contains(r.Line(), key) }} {
		for _, r := range p.Rows {
			if by(&r) {
				return &r
			}
		}
	}
	t.Fatalf("no row %q:\n%s", key, benchtest.View(m))
	return nil
}

// columnOf is the row of a column.
func columnOf(t *testing.T, m *desk.Model, head string) *desk.Row {
	t.Helper()
	return row(t, m, "column "+head)
}

// openTable opens a table of the list that is open.
func openTable(t *testing.T, m *desk.Model, n int) {
	t.Helper()
	var all []desk.Row
	for _, r := range m.Page(m.ListWidth()).Rows {
		if strings.HasPrefix(r.Key, "table ") {
			all = append(all, r)
		}
	}
	if n >= len(all) {
		t.Fatalf("%d tables:\n%s", len(all), benchtest.View(m))
	}
	all[n].Enter(m)
}

// A list is taken in from the menu: it shows what it makes, a column can be said to mean
// something else, nothing changes before it is taken, and Backspace brings back what was.
func TestImportScreen(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	was := m.H
	m.Cfg.ListBytes = func(path string) ([]byte, error) { return os.ReadFile(benchtest.Path(t, "testdata/lists/"+path)) }
	kept := ""
	m.Cfg.WriteNew = func(path string, text []byte) error { kept = string(text); return nil }
	take := func(name string) error { return taken(m, name) }
	if err := take("pin-table.md"); err != nil {
		t.Fatal(err)
	}
	if m.Top() != "import" || m.H != was {
		t.Fatalf("on %s, changed %v", m.Top(), m.H != was)
	}
	at := func(key string) desk.Row {
		t.Helper()
		p := m.Page(m.ListWidth())
		k := slices.IndexFunc(p.Rows, func(r desk.Row) bool { return strings.HasPrefix(r.Key, key) || strings.Contains(r.Text, key) })
		if k < 0 {
			t.Fatalf("no row %q:\n%s", key, benchtest.View(m))
		}
		return p.Rows[k]
	}
	if r := at("take"); !strings.Contains(r.Text, "2 ends, 10 wires") {
		t.Errorf("%s", r.Text)
	}
	// Said to mean nothing, the column of colours makes wires without colour.
	for n := range 2 { // each table has columns of its own
		openTable(t, m, n)
		for range len(wirelistname.Fields()) {
			if strings.Contains(columnOf(t, m, "Color").Text, string(wirelistname.FieldIgnore)) {
				break
			}
			columnOf(t, m, "Color").Step(m, 1)
		}
		benchtest.Press(m, "esc")
	}
	if w := lists.Taking(m).H.Wires[0]; w.Colour.V != "" || m.H != was {
		t.Errorf("colour %q", w.Colour.V)
	}
	if err := at("recipe").Field.Set(m, "mine.toml"); err != nil || !strings.Contains(kept, "Color") {
		t.Errorf("%v: %q", err, kept)
	}
	if r, err := wirelistname.DecodeRecipe("mine.toml", []byte(kept)); err != nil || len(r.Tables) != 2 ||
		r.Tables[0].Columns["Color"] != wirelistname.FieldIgnore {
		t.Errorf("%v %+v", err, r)
	}
	at("take").Enter(m)
	if len(m.H.Wires) != 10 || len(m.Stack) != 0 {
		t.Fatalf("%d wires, on %s: %s", len(m.H.Wires), m.Top(), m.Says)
	}
	benchtest.Press(m, "backspace")
	if !m.H.Same(was) {
		t.Error("what was is not back")
	}
	for _, bad := range []string{"", "nowhere.csv"} {
		if err := take(bad); err == nil {
			t.Errorf("%q was taken", bad)
		}
	}
	m.Cfg.ListBytes = func(string) ([]byte, error) { return []byte("PK\x03\x04"), nil }
	if err := take("x.xlsx"); err == nil || m.H != m.File.Saved && !m.H.Same(was) {
		t.Error("no workbook was taken for one")
	}
	m.Cfg.ListBytes = func(string) ([]byte, error) { return nil, errors.New("gone") }
	if err := take("x.csv"); err == nil || !strings.Contains(err.Error(), "gone") {
		t.Errorf("%v", err)
	}
}

// A list held against a harness stops it where they join otherwise; taken back, it does not.
func TestHeldAgainstAList(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	a, b := m.H.Wires[0], m.H.Wires[1]
	text := "wire,from,to\n"
	for _, w := range m.H.Wires {
		from := w.From.V
		switch w.ID {
		case a.ID:
			from = b.From.V
		case b.ID:
			from = a.From.V
		}
		text += w.ID + "," + from + "," + w.To.V + "\n"
	}
	m.Cfg.ListBytes = func(string) ([]byte, error) { return []byte(text), nil }
	if err := taken(m, "second.csv"); err != nil {
		t.Fatal(err)
	}
	p := m.Page(m.ListWidth())
	p.Rows[slices.IndexFunc(p.Rows, func(r desk.Row) bool { return r.Key == "attach" })].Enter(m)
	n := 0
	for _, g := range m.Sheet.Snags {
		if g.Rule == "list.joins" {
			n++
		}
	}
	if n != 1 || m.H.Head.ListedFrom.V != "second.csv" {
		t.Errorf("%d stops, from %q: %s", n, m.H.Head.ListedFrom.V, m.Says)
	}
	held := func(p desk.Page) (says string) {
		for _, r := range p.Rows {
			if strings.HasPrefix(r.Key, "not held ") {
				says += r.Text + "\n"
			}
		}
		return says
	}
	if strings.Contains(m.Says, "not all") || held(p) != "" {
		t.Errorf("all of it is checked: %s%s", m.Says, held(p))
	}
	benchtest.Press(m, "backspace")
	text = "wire,from,to\n1," + a.From.V + ",lamp\n2," + b.From.V + ",lamp\n"
	if err := taken(m, "short.csv"); err != nil {
		t.Fatal(err)
	}
	p = m.Page(m.ListWidth())
	p.Rows[slices.IndexFunc(p.Rows, func(r desk.Row) bool { return r.Key == "attach" })].Enter(m)
	if says := held(p); !strings.Contains(says, "not checked: the ends at lamp,") ||
		!strings.Contains(says, "as the lists do not name them") ||
		!strings.HasSuffix(m.Says, "not all of the harness is checked") {
		t.Errorf("a list that says little: %s%s", m.Says, says)
	}
	benchtest.Press(m, "backspace")
	for _, g := range m.Sheet.Snags {
		if g.Rule == "list.joins" {
			t.Errorf("undone, and %+v", g)
		}
	}
}

// Every meaning is reached by + alone, also where nothing in the list takes it; Backspace takes
// back what was said and leaves the harness alone; what was said holds when the list is opened
// again; a line of the report opens in full.
func TestSayingWhatColumnsMean(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	was := m.H
	m.Cfg.ListBytes = func(string) ([]byte, error) {
		return []byte("Wire,From,To,Sz,Col,Length\n1,P1:1,P2:1,22,red,850\n" +
			"2,P1:2,P2:2,22,blue,900\n3,P1:3,P2:3,22,blue,900\n4,P1:4,P2:4,22,blue,900\n"), nil
	}
	take := func() {
		t.Helper()
		if err := taken(m, "simple.csv"); err != nil {
			t.Fatal(err)
		}
		openTable(t, m, 0)
	}
	said := func() wirelistname.Field {
		if all := lists.Taking(m).Recipe.Tables; len(all) > 0 {
			return all[0].Columns["Sz"]
		}
		return ""
	}
	find := func(is func(r desk.Row) bool) desk.Row {
		t.Helper()
		p := m.Page(m.ListWidth())
		k := slices.IndexFunc(p.Rows, is)
		if k < 0 {
			t.Fatalf("no such row:\n%s", benchtest.View(m))
		}
		return p.Rows[k]
	}
	column := func() *desk.Row { return columnOf(t, m, "Sz") }
	take()
	seen := map[wirelistname.Field]bool{}
	for range wirelistname.Fields() {
		column().Step(m, 1)
		f := said()
		seen[f] = true
		if !strings.Contains(column().Text, "is  "+string(f)) {
			t.Errorf("said %s, shown %q", f, column().Text)
		}
	}
	if len(seen) != len(wirelistname.Fields()) {
		t.Errorf("%d of %d meanings are reached: %v", len(seen), len(wirelistname.Fields()), seen)
	}
	for said() != wirelistname.FieldGauge {
		column().Step(m, 1)
	}
	column().Step(m, 1)
	benchtest.Press(m, "backspace")
	if said() != wirelistname.FieldGauge || m.H != was {
		t.Errorf("%s, %v: %s", said(), m.H == was, m.Says)
	}
	benchtest.Press(m, "esc")
	take()
	if said() != wirelistname.FieldGauge || lists.Taking(m).H.Wires[0].Size != "22" {
		t.Errorf("what was said is gone: %v", lists.Taking(m).Recipe.Tables)
	}
	for range 9 { // nothing is left to take back
		benchtest.Press(m, "backspace")
	}
	if m.H != was || m.Top() != lists.TableKind {
		t.Errorf("on %s: %s", m.Top(), m.Says)
	}
	benchtest.Press(m, "esc")
	find(func(r desk.Row) bool { return strings.Contains(r.Text, "length without unit") }).Enter(m)
	told := benchtest.View(m)
	if !m.Here().Wide || m.Top() != "told" || !strings.Contains(told, "kept in the note") {
		t.Errorf("on %s: %q", m.Top(), told)
	}
	benchtest.Press(m, "backspace")
	if m.Top() != "import" {
		t.Errorf("on %s", m.Top())
	}
}
