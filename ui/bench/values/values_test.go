package values_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/file/schema"
	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/values"
	"contralay/ui/bench/values/label"
)

// open puts the page of a record in front.
func open(m *desk.Model, at schema.At) {
	m.Show(desk.KindRecord, values.SubjectOf(m.H, at))
}

// rowOf puts the cursor on the row of a key.
func rowOf(t *testing.T, m *desk.Model, key string) desk.Row {
	t.Helper()
	p := m.Page(m.ListWidth())
	i := slices.IndexFunc(p.Rows, func(r desk.Row) bool { return r.Key == key })
	if i < 0 {
		t.Fatalf("no row %q on\n%s", key, benchtest.View(m))
	}
	m.Put(i, key)
	return p.Rows[i]
}

// Where another screen changes a value too, both call it the same.
func TestWordsAreThoseOfOtherScreens(t *testing.T) {
	shorttest.Turn(t)
	reached := map[string]*desk.Model{} // they are only read
	for _, c := range []struct {
		file, screen, table, key, row string
	}{
		{"demo.toml", "end", "termination", "datum", "length from"}, {"demo.toml", "end", "termination", "firewall", "firewall"},
		{"demo.toml", "splice", "splice", "part", "part"}, {"demo.toml", "splice", "splice", "toward", "lies toward"},
		{"demo.toml", "splice", "splice", "offset_mm", "middle"},
		{"demo.toml", "feed", "feed", "device", "device"}, {"demo.toml", "feed", "feed", "amps", "rating"},
		{"demo.toml", "feed", "feed", "outputs", "outputs"}, {"demo.toml", "feed", "feed", "before_mm", "wire before"},
		{"demo.toml", "feed", "feed", "name", "name"},
		{"demo.toml", "wire", "wire", "amps", "current"}, {"demo.toml", "wire", "wire", "size", "size"},
		{"demo.toml", "wire", "wire", "spec", "spec"}, {"demo.toml", "wire", "wire", "colour", "colour"},
		{"demo.toml", "wire", "wire", "role", "role"}, {"demo.toml", "wire", "wire", "from", "from"},
		{"demo.toml", "wire", "wire", "to", "to"},
		{"demo.toml", "wire", "wire", "signal", "signal"}, {"demo.toml", "wire", "wire", "measured_drop_v", "drop"},
		{"demo.toml", "duty", "wire", "on_s", "on for"}, {"demo.toml", "duty", "wire", "period_s", "in every"},
		{"demo.toml", "duty", "wire", "rest_a", "in between"},
		{"example.toml", "layer", "branch.layer", "locked", "locked"}, {"example.toml", "layer", "branch.layer", "lay_mm", "lay length"},
		{"example.toml", "layer", "branch.layer", "fillers", "fillers"}, {"example.toml", "layer", "branch.layer", "bind_mm", "binder"},
		{"demo.toml", "cover", "branch.cover", "from_mm", "start"}, {"demo.toml", "cover", "branch.cover", "to_mm", "stop"},
		{"demo.toml", "build", "harness", "revision", "revision"},
		{"example.toml", "layers", "branch", "leavers_outside", "leavers outside"},
	} {
		m, known := reached[c.screen]
		if !known {
			m = benchtest.OpenAt(t, c.file, c.screen)
			reached[c.screen] = m
		}
		if says := label.Of(c.table, c.key).Says; says != c.row {
			t.Errorf("%s.%s is %q here and %q on the screen %s", c.table, c.key, says, c.row, c.screen)
		}
		p := m.Page(m.ListWidth())
		if !slices.ContainsFunc(p.Rows, func(r desk.Row) bool { return strings.HasPrefix(strings.TrimSpace(r.Line()), c.row+" ") }) {
			t.Errorf("no row of the screen %s begins with %q:\n%s", c.screen, c.row, benchtest.View(m))
		}
	}
}

// A rule says what it changes on this harness, against its default where the shop has its own. The
// trunk of example.toml is 5.44 mm over: a turn of 12 times that is 65.28 mm, of 10 times 54.4.
func TestRuleSaysWhatItChanges(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	benchtest.GoTo(t, m, "esc", "@rules of this shop", "enter")
	rowOf(t, m, "lay_ratio")
	benchtest.Press(m, "1", "0", "enter")
	if v := m.H.Rules.LayRatio; !v.Set || v.V != 10 {
		t.Fatalf("10 was typed: %+v, %s", v, m.Says)
	}
	says := strings.Join(m.Page(m.ListWidth()).Lines, "\n")
	if !strings.Contains(says, "With the default 12: ") || !strings.Contains(says, "lay 65, now 54 mm") {
		t.Errorf("lay ratio 10: %q", says)
	}
	if r := rowOf(t, m, "lay_ratio"); !strings.Contains(r.Line(), "10   default 12") {
		t.Errorf("the row says %q", r.Line())
	}
	// the other way round: at its default a rule is compared with what + gives
	benchtest.Press(m, ".")
	if m.H.Rules.LayRatio.Set || !strings.Contains(m.Says, "12 default") {
		t.Errorf("left out: %+v, %q", m.H.Rules.LayRatio, m.Says)
	}
	says = strings.Join(m.Page(m.ListWidth()).Lines, "\n")
	if want := "lay 68, now 65 mm"; !strings.Contains(says, "With 12.5: ") || !strings.Contains(says, want) { // 12.5 x 5.44 = 68.0
		t.Errorf("lay ratio left out: %q, want %q", says, want)
	}
	rowOf(t, m, "outer")
	benchtest.Press(m, "down", "up")
	says = strings.Join(m.Page(m.ListWidth()).Lines, "\n")
	if want := "With RH: L1 turns RH, now LH"; !strings.Contains(says, want) {
		t.Errorf("the outermost layer: %q, want %q", says, want)
	}
	rowOf(t, m, "pack_joints")
	benchtest.Press(m, "up", "down")
	if says = strings.Join(m.Page(m.ListWidth()).Lines, "\n"); !strings.Contains(says, "nothing changes on this harness") {
		t.Errorf("joints from a pack: %q", says)
	}
	rowOf(t, m, "filler_c")
	benchtest.Press(m, "up", "down")
	if says = strings.Join(m.Page(m.ListWidth()).Lines, "\n"); strings.Contains(says, "changes on this") || strings.Contains(says, "now") {
		t.Errorf("of a rule without a default: %q", says)
	}
}

// Every number can be stepped from where it is and back, and from where it is left out.
func TestEveryNumberSteps(t *testing.T) {
	shorttest.Turn(t)
	m := benchtest.Open(t, "every-key.toml")
	steps := 0
	eachTable(func(table schema.Table) {
		at := first(m.H, table.Name)
		for _, k := range table.Keys {
			if !number(k) && k.Kind != schema.KindFlag && k.Kind != schema.KindChoice || locks(table.Name, k.Name) {
				continue
			}
			was := m.H
			m.Sys = unit.MM
			open(m, at)
			if v := schema.Get(m.H, at, k.Name); v != nil {
				rowOf(t, m, k.Name)
				benchtest.Press(m, "+")
				up := schema.Get(m.H, at, k.Name)
				if _, is := v.(float64); m.Trouble || up == v && (is || k.Most > k.Least) && v != int64(k.Most) {
					t.Errorf("%s.%s: + from %v gives %v: %s", table.Name, k.Name, v, up, m.Says)
				}
				if f, is := v.(float64); is && up.(float64) <= f {
					t.Errorf("%s.%s: + from %v gives %v", table.Name, k.Name, v, up)
				}
				steps++
			}
			m.H = was
			if !k.Must {
				if out, err := schema.Clear(was, at, k.Name); err == nil {
					m.H = out
				}
				m.Rebuild()
				rowOf(t, m, k.Name)
				benchtest.Press(m, "+")
				if got := schema.Get(m.H, at, k.Name); got == nil || m.Trouble {
					t.Errorf("%s.%s: + where it is left out gives %v: %s", table.Name, k.Name, got, m.Says)
				}
				steps++
			}
			m.H = was
			m.Rebuild()
			m.Back()
		}
	})
	if steps < 200 {
		t.Errorf("only %d steps", steps)
	}
}

// locks reports whether a key is one that the bench holds fixed in every-key.toml: a layer of L2
// is locked.
func locks(table, key string) bool {
	return table == "branch.layer" && key != "fillers" || key == "outer"
}

// What a number cannot be is refused: it says what is allowed, and nothing changes.
func TestRefusedByKeys(t *testing.T) {
	shorttest.Turn(t)
	m := benchtest.Open(t, "every-key.toml")
	refusals := 0
	eachTable(func(table schema.Table) {
		at := first(m.H, table.Name)
		for _, k := range table.Keys {
			var wrong []string
			switch {
			case k.Kind == schema.KindCount:
				wrong = []string{fmt.Sprint(k.Most + 1), "1.5"}
				if k.Least > 0 {
					wrong = append(wrong, "0")
				}
			case k.Kind == schema.KindNumber && !k.Holds(0):
				wrong = []string{"0", "2000000000"}
			case k.Kind == schema.KindNumber && k.Unit == "degrees" && k.Holds(-1):
				wrong = []string{"-1000000000", "200"}
			case k.Kind == schema.KindNumber && k.Unit == "°C":
				wrong = []string{"-300", "2000000000"}
			case k.Kind == schema.KindNumber:
				wrong = []string{"-1", "2000000000"}
			}
			for _, text := range wrong {
				was := m.H
				open(m, at)
				rowOf(t, m, k.Name)
				benchtest.Press(m, "enter")
				benchtest.Press(m, strings.Split(text, "")...)
				benchtest.Press(m, "enter")
				if !m.Trouble || !strings.Contains(m.Says, "Allowed: "+k.Allowed()) || m.H != was || m.Entry == nil {
					t.Errorf("%s.%s: %s: %q", table.Name, k.Name, text, m.Says)
				}
				benchtest.Press(m, "esc")
				m.Back()
				refusals++
			}
		}
	})
	if refusals < 150 {
		t.Errorf("only %d refusals", refusals)
	}
	for _, c := range []struct{ at, key, text, want string }{
		{"termination[0]", "id", "INJ1", "INJ1 is a termination already"},
		{"wire[0]", "from", "P9:A", `no termination has the id "P9"`},
		{"branch[1]", "to", "P1", "the branch closes a loop"},
		{"build[0]", "serial", "", "it is empty. Allowed: any text that no other build has as its serial"},
	} {
		was := m.H
		at, _ := schema.ParseAt(c.at)
		open(m, at)
		h := &hand{t: t, m: m}
		h.row(c.key)
		h.press("enter")
		h.refused = ""
		h.say(c.text)
		if !strings.Contains(h.refused, c.want) || m.H != was {
			t.Errorf("%s %s %q: %q, want %q", c.at, c.key, c.text, h.refused, c.want)
		}
		for m.Top() != desk.KindRecord {
			h.press("esc")
		}
		m.Back()
	}
}

// What is removed says what has lost an end by it, and one undo brings all of it back.
func TestRemove(t *testing.T) {
	m := benchtest.Open(t, "every-key.toml")
	was := m.H
	benchtest.GoTo(t, m, "esc", "@everything in the file", "enter", "@terminations", "enter")
	rowOf(t, m, "termination P1")
	benchtest.Press(m, ".")
	if m.Trouble || len(m.H.Terminations) != 2 || !strings.Contains(m.Says, "have lost an end at P1") {
		t.Errorf("P1: %q", m.Says)
	}
	benchtest.Press(m, "backspace", "esc")
	benchtest.GoTo(t, m, "@reels", "enter")
	rowOf(t, m, "reel 0")
	benchtest.Press(m, ".")
	if len(m.H.Reels) != 0 || m.Trouble {
		t.Errorf("the reel: %q", m.Says)
	}
	benchtest.Press(m, "backspace")
	if !m.H.Same(was) {
		t.Error("one undo each does not bring them back")
	}
}

// A new id goes wherever the harness names the old one, though a layer there is locked, and its
// page stays in front. The record of a build keeps its own.
func TestRename(t *testing.T) {
	m := benchtest.Open(t, "every-key.toml")
	was := m.H
	at := schema.At{{Table: "unit"}}
	open(m, at)
	h := &hand{t: t, m: m}
	h.row("id")
	h.press("enter")
	h.say("C9")
	if m.Trouble || m.H.Units[0].ID != "C9" || m.H.Branches[3].Layers[0].Pinned[0] != "C9" {
		t.Errorf("C1 is %s and pinned as %v: %s", m.H.Units[0].ID, m.H.Branches[3].Layers[0].Pinned, m.Says)
	}
	if v := benchtest.View(m); !strings.Contains(v, "Unit C9: everything") {
		t.Errorf("its page is not in front:\n%s", v)
	}
	benchtest.Press(m, "backspace")
	if !m.H.Same(was) {
		t.Error("one undo does not bring it back")
	}
}

// The record of a build is changed, and every page and answer says so.
func TestRecordOfABuildSaysSo(t *testing.T) {
	m := benchtest.Open(t, "every-key.toml")
	benchtest.GoTo(t, m, "esc", "@everything in the file", "enter", "@builds", "enter", "enter")
	rowOf(t, m, "reading")
	benchtest.Press(m, "enter")
	if v := benchtest.View(m); !strings.Contains(v, "This changes the record of serial 003.") {
		t.Errorf("the list says nothing:\n%s", v)
	}
	benchtest.GoTo(t, m, "enter")
	if v := benchtest.View(m); !strings.Contains(v, "This changes the record of serial 003.") {
		t.Errorf("the page says nothing:\n%s", v)
	}
	rowOf(t, m, "lay_mm")
	benchtest.Press(m, "4", "1", "enter")
	if got := m.H.Builds[0].Readings[0].LayMM; got.V != 41 || !strings.Contains(m.Says, "record of serial 003: lay length: 41 mm") {
		t.Errorf("%v: %q", got, m.Says)
	}
}

// On a screen in inches a length is shown and typed in inches, and the file has it in mm; what is
// only looked at stays as it is.
func TestInches(t *testing.T) {
	m := benchtest.Open(t, "every-key.toml")
	m.Sys = unit.Inch
	at := schema.At{{Table: "termination"}}
	open(m, at)
	if r := rowOf(t, m, "loop_mm"); !strings.Contains(r.Line(), "0.63 in") { // 16 / 25.4
		t.Errorf("16 mm is shown as %q", r.Line())
	}
	was := m.H
	benchtest.Press(m, "enter", "enter")
	if m.H != was {
		t.Errorf("looked at, the loop is %v", m.H.Terminations[0].LoopMM)
	}
	benchtest.Press(m, "1", "/", "2", "enter")
	if v := m.H.Terminations[0].LoopMM.V; v != 12.7 {
		t.Errorf("1/2 in is %v mm", v)
	}
	benchtest.Press(m, "enter", "-", "1", "enter")
	if !strings.Contains(m.Says, "a number in inches, 0 or more") {
		t.Errorf("-1 in: %q", m.Says)
	}
	benchtest.Press(m, "esc")
	open(m, schema.At{{Table: "harness"}}) // the file says mm: + makes it in, and the other way round
	for _, want := range []unit.System{unit.Inch, unit.MM} {
		rowOf(t, m, "units")
		benchtest.Press(m, "+")
		if m.Sys != want {
			t.Errorf("units %s on a screen in %s", m.H.Head.Units.V, m.Sys.Name())
		}
	}
}

// A page finds its record when others come or go before it, and knows when it is gone.
func TestPageFollowsItsRecord(t *testing.T) {
	h := benchtest.Open(t, "every-key.toml").H
	of := values.SubjectOf(h, schema.At{{Table: "branch", Index: 1}, {Table: "layer", Index: 0}})
	n := *h
	n.Branches = append([]model.Branch{{ID: "N1", From: "CRK1", To: "J9", LengthMM: 10}}, h.Branches...)
	n.Branches[2].Layers = []model.Layer{{}}
	if at, ok := values.ReadSubject(&n, of); !ok || at[0].Index != 2 {
		t.Errorf("R1 is found at %v", at)
	}
	n.Branches = slices.Delete(slices.Clone(n.Branches), 2, 3)
	if at, ok := values.ReadSubject(&n, of); ok {
		t.Errorf("R1 is gone and found at %v", at)
	}
}

// The first cover of a branch takes the sheath along that was proposed: with one cover in the file
// the branch would want none. Where a length starts is converted as on the page of the termination.
func TestWhatHangsTogether(t *testing.T) {
	m := benchtest.Open(t, "example.toml")
	n := *m.H
	n.Branches = slices.Clone(n.Branches)
	n.Branches[0].Covers = nil
	m.Change(&n, "")
	sheath := m.Sheet.Branches[0].Sheath.Part
	if sheath == "" || !m.Sheet.Branches[0].Sheath.Proposed {
		t.Fatalf("no sheath is proposed: %+v", m.Sheet.Branches[0].Sheath)
	}
	m.Show(desk.KindRecord, values.SubjectOf(m.H, schema.At{{Table: "branch"}}))
	h := &hand{t: t, m: m}
	h.row("cover")
	h.press("enter")
	h.row("add")
	h.press("enter")
	h.say("tape")
	covers := m.H.Branches[0].Covers
	if len(covers) != 2 || covers[0].What != model.CoverTape || covers[1].What != model.CoverSheath || covers[1].Part.V != sheath {
		t.Errorf("a tape gives %+v: %s", covers, m.Says)
	}
	if v := benchtest.View(m); !strings.Contains(v, "cover 1") {
		t.Errorf("the tape is not in front:\n%s", v)
	}

	m = benchtest.Open(t, "every-key.toml") // part_mm 31.3; the boot is 60 mm long: the lip lies 91.3 behind the face
	open(m, schema.At{{Table: "termination"}})
	h = &hand{t: t, m: m}
	h.row("datum")
	h.press("enter")
	h.say("mating face")
	if got := m.H.Branches[0].LengthMM; got != 450+91.3 || m.H.Terminations[0].Datum.V != model.DatumMatingFace {
		t.Errorf("from the mating face T1 is %v mm: %s", got, m.Says)
	}
}
