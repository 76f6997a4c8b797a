package bench

import (
	"errors"
	"os"
	"slices"
	"strings"
	"testing"

	"contralay/model/wirelist"
)

// A list is taken in from the menu: it shows what it makes, a column can be said to mean
// something else, nothing changes before it is taken, and Backspace brings back what was.
func TestImportScreen(t *testing.T) {
	m := open(t, "example.toml")
	was := m.h
	m.cfg.ListBytes = func(path string) ([]byte, error) { return os.ReadFile("../../testdata/lists/" + path) }
	kept := ""
	m.cfg.WriteNew = func(path string, text []byte) error { kept = string(text); return nil }
	take := func(name string) error { return m.importRow().field.set(m, name) }
	if err := take("pin-table.md"); err != nil {
		t.Fatal(err)
	}
	if m.top() != "import" || m.h != was {
		t.Fatalf("on %s, changed %v", m.top(), m.h != was)
	}
	at := func(key string) row {
		t.Helper()
		p := m.page(m.listWidth())
		k := slices.IndexFunc(p.rows, func(r row) bool { return strings.HasPrefix(r.key, key) || strings.Contains(r.text, key) })
		if k < 0 {
			t.Fatalf("no row %q:\n%s", key, m.View())
		}
		return p.rows[k]
	}
	if r := at("take"); !strings.Contains(r.text, "2 ends, 10 wires") {
		t.Errorf("%s", r.text)
	}
	// Said to mean nothing, the column of colours makes wires without colour.
	for range len(wirelist.Fields()) {
		if strings.Contains(at("column Color").text, string(wirelist.FieldIgnore)) {
			break
		}
		at("column Color").step(m, 1)
	}
	if w := m.taking.h.Wires[0]; w.Colour.V != "" || m.h != was {
		t.Errorf("colour %q", w.Colour.V)
	}
	if err := at("recipe").field.set(m, "mine.toml"); err != nil || !strings.Contains(kept, "Color") {
		t.Errorf("%v: %q", err, kept)
	}
	if r, err := wirelist.DecodeRecipe("mine.toml", []byte(kept)); err != nil || r.Columns["Color"] != wirelist.FieldIgnore {
		t.Errorf("%v %+v", err, r)
	}
	at("take").enter(m)
	if len(m.h.Wires) != 10 || len(m.stack) != 0 {
		t.Fatalf("%d wires, on %s: %s", len(m.h.Wires), m.top(), m.says)
	}
	press(m, "backspace")
	if !m.h.Same(was) {
		t.Error("what was is not back")
	}
	for _, bad := range []string{"", "nowhere.csv"} {
		if err := take(bad); err == nil {
			t.Errorf("%q was taken", bad)
		}
	}
	m.cfg.ListBytes = func(string) ([]byte, error) { return []byte("PK\x03\x04"), nil }
	if err := take("x.xlsx"); err == nil || m.h != m.saved && !m.h.Same(was) {
		t.Error("no workbook was taken for one")
	}
	m.cfg.ListBytes = func(string) ([]byte, error) { return nil, errors.New("gone") }
	if err := take("x.csv"); err == nil || !strings.Contains(err.Error(), "gone") {
		t.Errorf("%v", err)
	}
}

// A list held against a harness stops it where they join otherwise; taken back, it does not.
func TestHeldAgainstAList(t *testing.T) {
	m := open(t, "example.toml")
	a, b := m.h.Wires[0], m.h.Wires[1]
	text := "wire,from,to\n"
	for _, w := range m.h.Wires {
		from := w.From.V
		switch w.ID {
		case a.ID:
			from = b.From.V
		case b.ID:
			from = a.From.V
		}
		text += w.ID + "," + from + "," + w.To.V + "\n"
	}
	m.cfg.ListBytes = func(string) ([]byte, error) { return []byte(text), nil }
	if err := m.importRow().field.set(m, "second.csv"); err != nil {
		t.Fatal(err)
	}
	p := m.page(m.listWidth())
	p.rows[slices.IndexFunc(p.rows, func(r row) bool { return r.key == "attach" })].enter(m)
	n := 0
	for _, g := range m.sheet.Snags {
		if g.Rule == "list.joins" {
			n++
		}
	}
	if n != 1 || m.h.Head.ListedFrom.V != "second.csv" {
		t.Errorf("%d stops, from %q: %s", n, m.h.Head.ListedFrom.V, m.says)
	}
	press(m, "backspace")
	for _, g := range m.sheet.Snags {
		if g.Rule == "list.joins" {
			t.Errorf("undone, and %+v", g)
		}
	}
}

// Every meaning is reached by + alone, also where nothing in the list takes it; Backspace takes
// back what was said and leaves the harness alone; what was said holds when the list is opened
// again; a line of the report opens in full.
func TestSayingWhatColumnsMean(t *testing.T) {
	m := open(t, "example.toml")
	was := m.h
	m.cfg.ListBytes = func(string) ([]byte, error) {
		return []byte("Wire,From,To,Sz,Col,Length\n1,P1:1,P2:1,22,red,850\n2,P1:2,P2:2,22,blue,900\n3,P1:3,P2:3,22,blue,900\n4,P1:4,P2:4,22,blue,900\n"), nil
	}
	take := func() {
		t.Helper()
		if err := m.importRow().field.set(m, "simple.csv"); err != nil {
			t.Fatal(err)
		}
	}
	find := func(is func(r row) bool) row {
		t.Helper()
		p := m.page(m.listWidth())
		k := slices.IndexFunc(p.rows, is)
		if k < 0 {
			t.Fatalf("no such row:\n%s", m.View())
		}
		return p.rows[k]
	}
	column := func() row { return find(func(r row) bool { return strings.HasPrefix(r.text, "column Sz") }) }
	take()
	seen := map[wirelist.Field]bool{}
	for range wirelist.Fields() {
		column().step(m, 1)
		f := m.taking.recipe.Columns["Sz"]
		seen[f] = true
		if !strings.Contains(column().text, "is  "+string(f)) {
			t.Errorf("said %s, shown %q", f, column().text)
		}
	}
	if len(seen) != len(wirelist.Fields()) {
		t.Errorf("%d of %d meanings are reached: %v", len(seen), len(wirelist.Fields()), seen)
	}
	for m.taking.recipe.Columns["Sz"] != wirelist.FieldGauge {
		column().step(m, 1)
	}
	column().step(m, 1)
	press(m, "backspace")
	if m.taking.recipe.Columns["Sz"] != wirelist.FieldGauge || m.h != was {
		t.Errorf("%s, %v: %s", m.taking.recipe.Columns["Sz"], m.h == was, m.says)
	}
	press(m, "esc")
	take()
	if m.taking.recipe.Columns["Sz"] != wirelist.FieldGauge || m.taking.h.Wires[0].Size != "22" {
		t.Errorf("what was said is gone: %v", m.taking.recipe.Columns)
	}
	for range 9 { // nothing is left to take back
		press(m, "backspace")
	}
	if m.h != was || m.top() != "import" {
		t.Errorf("on %s: %s", m.top(), m.says)
	}
	find(func(r row) bool { return strings.Contains(r.text, "length without unit") }).enter(m)
	said := ""
	for _, r := range m.page(40).rows {
		said += r.text + " "
	}
	if !m.wideTop() || m.top() != "told" || !strings.Contains(said, "kept in the note") {
		t.Errorf("on %s: %q", m.top(), said)
	}
	press(m, "backspace")
	if m.top() != "import" {
		t.Errorf("on %s", m.top())
	}
}

// A name that is longer than its place shows its end, where the typing goes on.
func TestLongDraft(t *testing.T) {
	for _, c := range []struct {
		text string
		w    int
		want string
	}{{"short", 20, "short"}, {"/a/very/long/name/of/a.csv", 12, ".../of/a.csv"}, {"/a/very/long/name/of/a.csv", 2, "...a.csv"}} {
		if got := tail(c.text, c.w); got != c.want || len(got) > max(c.w, 8) {
			t.Errorf("%q in %d: %q, want %q", c.text, c.w, got, c.want)
		}
	}
}
