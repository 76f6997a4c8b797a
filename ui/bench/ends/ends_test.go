package ends_test

import (
	"strings"
	"testing"

	"contralay/model"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/ends"
)

// always is what is still there.
func always(*desk.Model) bool { return true }

// keys are the keys of the rows in front.
func keys(m *desk.Model) []string {
	var out []string
	for _, r := range m.Page(m.ListWidth()).Rows {
		out = append(out, r.Key)
	}
	return out
}

// A number and Enter keep the arrangements of so many cavities, the one to take first; Enter takes it:
// four keys from an open list to a connector of 37.
func TestChooseByNumberOfCavities(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	took := ""
	ends.ChooseInsert(m, always, func(_ *desk.Model, id string) { took = id })
	if n := len(keys(m)); n != len(m.Sheet.Cat.InsertIDs()) || keys(m)[0] != "14-18" { // the only one of this harness
		t.Errorf("%d arrangements, first %s", n, keys(m)[0])
	}
	deep := len(m.Stack)
	benchtest.Press(m, "3", "7", "enter")
	if got := strings.Join(keys(m), " "); got != "14-35 14-37 24-37" {
		t.Errorf("of 37 cavities: %s", got)
	}
	benchtest.Press(m, "enter")
	if took != "14-35" || len(m.Stack) != deep-1 || ends.Gender(m) != model.GenderPin {
		t.Errorf("took %q as %s, %d screens of %d", took, ends.Gender(m), len(m.Stack), deep)
	}
	ends.ChooseInsert(m, always, func(_ *desk.Model, id string) { took = id })
	benchtest.Press(m, "+", "1", "2", "8", "enter", ".", "3", "8", "enter")
	if !m.Trouble || !strings.Contains(m.Says, "no arrangement has 38 cavities. There are some of 37 and of 39") {
		t.Errorf("of 38: %q", m.Says)
	}
	benchtest.Press(m, "esc", "1", "0", "0", "enter", "down", "enter")
	if took != "22-1" || ends.Gender(m) != model.GenderSocket {
		t.Errorf("the second of 100 as socket: %s, %s", took, ends.Gender(m))
	}
	for _, c := range []struct{ key, says string }{{"0", "give 1 to 999"}, {"9", ""}} {
		ends.ChooseInsert(m, always, func(*desk.Model, string) {})
		benchtest.Press(m, c.key, "enter")
		if m.Trouble != (c.says != "") || !strings.Contains(m.Says, c.says) {
			t.Errorf("%s: %q", c.key, m.Says)
		}
		benchtest.Press(m, "esc", "esc")
	}
	// Cavities that no arrangement has, where whoever asks can do without one.
	own := 0
	ends.Choose(m, ends.Choosing{There: always, Take: func(*desk.Model, string) {},
		Own: func(_ *desk.Model, n int) error { own = n; return nil }})
	benchtest.Press(m, "3", "8", "enter", "enter")
	if own != 38 || m.Trouble {
		t.Errorf("cavities of its own: %d, %q", own, m.Says)
	}
}

// The face is that of the gender on the page, seen from the rear: on a pin insert 1 of a 14-35 lies left
// of 18, on a socket insert right of it. Source: the table of faces, where 1 is at x +0.24 on the front of
// the pin insert and 18 at x -0.28. A small screen has the list alone.
func TestFaceOfTheRow(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	m.ShownOn(m.Cfg.Palette, true)
	ends.ChooseInsert(m, always, func(*desk.Model, string) {})
	benchtest.Press(m, "3", "7", "enter")
	row := func() string {
		for _, line := range strings.Split(benchtest.View(m), "\n") {
			_, right, _ := strings.Cut(line, "||")
			if f := strings.Fields(strings.Trim(right, "|")); strings.Contains(strings.Join(f, " "), "18") &&
				strings.Contains(right, " 1 ") {
				return strings.Join(strings.Fields(strings.ReplaceAll(strings.Trim(right, "|"), ".", " ")), " ")
			}
		}
		return ""
	}
	for _, size := range [][2]int{{80, 24}, {120, 40}} {
		benchtest.Size(m, size[0], size[1])
		if got := row(); got != "1 18" {
			t.Errorf("%v, pin: %q\n%s", size, got, benchtest.View(m))
		}
		benchtest.Press(m, "+")
		if got := row(); got != "18 1" {
			t.Errorf("%v, socket: %q\n%s", size, got, benchtest.View(m))
		}
		benchtest.Press(m, "-")
	}
	benchtest.Press(m, "down")
	if v := benchtest.View(m); !strings.Contains(v, "no face is known for 14-37") {
		t.Errorf("an arrangement without a face:\n%s", v)
	}
	benchtest.Size(m, 40, 12)
	if v := benchtest.View(m); !strings.Contains(v, "14-37") || strings.Contains(v, "no face") {
		t.Errorf("40 x 12:\n%s", v)
	}
}

// A connector that is wired takes another arrangement in one change; what is in use moves in order where
// its names differ, which is said in one line, and one undo takes it back.
func TestWhichConnector(t *testing.T) {
	m := benchtest.OpenAt(t, "example.toml", "which connector")
	was := m.H
	if got := m.Page(m.ListWidth()); got.Rows[m.At(got)].Key != "14-15" { // fourteen of 20 hold eleven of 22, one of 20 and Z
		t.Errorf("the cursor is on %q", got.Rows[m.At(got)].Key)
	}
	for _, c := range []struct{ insert, says string }{
		{"18-32", "P1 is a 18-32: all cavities keep their names"}, {"23-54", "P1 is a 23-54: 13 cavities moved in order"},
	} {
		benchtest.OnRow(t, m, c.insert)
		benchtest.Press(m, "enter")
		if p1 := m.H.Terminations[m.Sheet.Index.Termination["P1"]]; p1.Insert.V != c.insert || m.Trouble || m.Says != c.says {
			t.Errorf("%s: %q, want %q", p1.Insert.V, m.Says, c.says)
		}
		benchtest.Press(m, "backspace")
		if !m.H.Same(was) {
			t.Errorf("one undo leaves %+v", m.H.Terminations[0])
		}
		m.Show(ends.WhichKind, "P1")
	}
	// Any other may be taken by its face, as a socket too; what it lacks room for is refused and changes
	// nothing.
	benchtest.GoTo(t, m, "@any other", "enter", "+", "5", "5", "enter", "@22-55", "enter")
	if p1 := m.H.Terminations[0]; p1.Insert.V != "22-55" || p1.Gender.V != model.GenderSocket {
		t.Errorf("by its face: %s %s, %q", p1.Insert.V, p1.Gender.V, m.Says)
	}
	benchtest.Press(m, "backspace")
	m.Show(ends.WhichKind, "P1")
	benchtest.GoTo(t, m, "@any other", "enter", "6", "enter", "enter")
	if !m.H.Same(was) || !m.Trouble || !strings.Contains(m.Says, "has no place for") {
		t.Errorf("six cavities: %q", m.Says)
	}
}

// Spares and more wires are asked for with + - and digits; the list is ranked for them. Never fewer than
// the harness has.
func TestAskingForMore(t *testing.T) {
	m := benchtest.OpenAt(t, "example.toml", "which connector")
	before := strings.Join(keys(m), " ")
	benchtest.OnRow(t, m, "spares wanted")
	benchtest.Press(m, "3", "0", "enter")
	// Twelve wires and thirty are 42 of size 20, one more than a 20-41 has.
	if after := strings.Join(keys(m), " "); m.Trouble || after == before || !strings.Contains(after, "spares 22-53 22-55 24-4") {
		t.Errorf("30 spares: %q\n%s", m.Says, after)
	}
	benchtest.OnRow(t, m, "22 AWG")
	benchtest.Press(m, "-")
	if !m.Trouble || !strings.Contains(m.Says, "out of range") {
		t.Errorf("fewer wires than there are: %q", m.Says)
	}
	benchtest.Press(m, "9", "9", "9", "enter", "esc")
	benchtest.Press(m, "5", "0", "0", "enter")
	if v := benchtest.View(m); m.Trouble || !strings.Contains(v, "No arrangement takes all") || !strings.Contains(v, "25-187") {
		t.Errorf("500 wires: %q\n%s", m.Says, v)
	}
}

// A connector that is not there yet is asked about by typing: sixteen of 22 AWG and a shielded pair.
func TestWhichNew(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	took := ""
	ends.WhichNew(m, ends.Choosing{There: always, Take: func(_ *desk.Model, id string) { took = id }})
	var asked []string
	for _, r := range m.Page(m.ListWidth()).Rows {
		if f := strings.Fields(r.Line()); len(f) > 1 && f[1] == "AWG" {
			asked = append(asked, f[0])
		}
	}
	if got := strings.Join(asked, " "); got != "28 26 24 22 20 18 16 14 12" { // what contacts take; 30 is too thin for all
		t.Errorf("asked for %s", got)
	}
	if p := m.Page(m.ListWidth()); !strings.HasPrefix(p.Rows[m.At(p)].Line(), "22 AWG") {
		t.Errorf("the cursor is on %q", p.Rows[m.At(p)].Line())
	}
	benchtest.Press(m, "1", "6", "enter")
	benchtest.OnRow(t, m, "more shielded pairs")
	benchtest.Press(m, "+")
	if !strings.Contains(strings.Join(keys(m), " "), "spares 11-19 12-35") {
		t.Errorf("nineteen: %v", keys(m))
	}
	benchtest.OnRow(t, m, "12-35")
	benchtest.Press(m, "enter")
	if took != "12-35" || m.Front() != nil {
		t.Errorf("took %q", took)
	}
}

// A ring terminal holds several wires together: no sealed cavity does, which is said, and nothing is
// offered.
func TestSeveralWiresInOneCavity(t *testing.T) {
	m := benchtest.Open(t, "demo.toml")
	m.Show(ends.WhichKind, "GND1")
	if v := benchtest.View(m); !strings.Contains(v, "holds several wires") || strings.Contains(v, "14-35") ||
		len(m.Page(m.ListWidth()).Rows) > 0 {
		t.Errorf("%s", v)
	}
}
