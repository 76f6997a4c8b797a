package layers_test

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"
	"time"

	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/file"
	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/ui/bench"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/layers"
)

// ofFour is a branch of four sizes that no search proves in a moment.
func ofFour() string {
	var b strings.Builder
	b.WriteString("format = 1\n[[termination]]\nid = \"P\"\n[[termination]]\nid = \"Q\"\n" +
		"[[branch]]\nid = \"T\"\nfrom = \"P\"\nto = \"Q\"\nlength_mm = 800.0\nmake = \"laid\"\n")
	n := 0
	for _, of := range []struct {
		size string
		n    int
	}{{"22", 26}, {"20", 18}, {"18", 9}, {"16", 7}} {
		for range of.n {
			n++
			fmt.Fprintf(&b, "[[wire]]\nid = \"%d\"\nfrom = \"P:%d\"\nto = \"Q:%d\"\nspec = \"AS22759/32\"\nsize = %q\n", n, n, n, of.size)
		}
	}
	return b.String()
}

// searched is a bench that searches by itself for so long, by a clock of its own that each look at it
// puts on by 10 ms. It stands on the step before the lay-up.
func searched(t *testing.T, search time.Duration) (m *desk.Model, looks *int) {
	t.Helper()
	d, err := file.Parse([]byte(ofFour()), "test")
	if err != nil {
		t.Fatal(err)
	}
	looks = new(int)
	return benchtest.Ways(bench.New(desk.Config{Doc: d, Path: "test.toml", Cat: benchtest.Catalogue(t), Search: search,
		Now: func() time.Time { *looks++; return time.UnixMilli(int64(10 * *looks)) }})), looks
}

// alone is a bench that has nothing but the search worked out at its step Layers: what it finds does not hang on the rest.
func alone(m *desk.Model) *desk.Model {
	m.Tables.Steps = slices.Clone(m.Tables.Steps)
	for k := range m.Tables.Steps {
		if s := &m.Tables.Steps[k]; s.Kind == layers.Step {
			s.Beside = layers.SearchOn
		}
	}
	return m
}

// slice reports whether what runs beside the screen is a slice of a search: how the branch could be otherwise comes first.
func slice(m *desk.Model) bool {
	for key := range m.Pending {
		if strings.HasPrefix(key, "search") {
			return true
		}
	}
	return false
}

// keysOf are the rows of the page in front, by key.
func keysOf(m *desk.Model) (out []string) {
	for _, r := range m.Page(m.ListWidth()).Rows {
		out = append(out, r.Key)
	}
	return out
}

// worsened makes the answer at once of the branch in hand one that lacks its cheapest lay-up.
func worsened(t *testing.T, m *desk.Model) (key string, lacks sheet.Option) {
	t.Helper()
	key = bundle.PlanKey(m.Sheet, m.Branch)
	p := m.Sheet.Proposals[key]
	if len(p.Options) < 2 {
		t.Fatalf("%d lay-ups", len(p.Options))
	}
	lacks, p.Options = p.Options[0], slices.Clone(p.Options[1:])
	p.Shown, p.Plain, p.Reach = len(p.Options), 0, sheet.Reach{}
	planning.Adopt(m.Sheet, key, p)
	m.Rebuild()
	return key, lacks
}

// While the lay-up is in front a search goes on by itself, for as long as the bench is told, and then rests;
// Enter on its row goes on, and stops it.
func TestSearchGoesOnAndRests(t *testing.T) {
	shorttest.Turn(t)
	m, looks := searched(t, 400*time.Millisecond)
	if cmd := m.Plan(); cmd != nil {
		t.Fatal("it searches while another step is in front")
	}
	cmd := benchtest.Update(m, benchtest.Message("right"))
	slices := 0
	for works := 0; cmd != nil; works++ {
		if row := benchtest.OnRow(t, m, "searching"); !strings.Contains(row.Text, "%") || works > 100 {
			t.Fatalf("slice %d: %q", slices, row.Text)
		}
		if slice(m) {
			slices++
		}
		cmd = benchtest.Update(m, cmd())
	}
	if slices < 5 || slices > 20 {
		t.Errorf("400 ms in slices of 40 ms are %d", slices)
	}
	row := benchtest.OnRow(t, m, "not every lay-up was tried")
	if !strings.Contains(row.Detail, "left to gain at most") {
		t.Errorf("it rests and names no gap: %q", row.Detail)
	}
	was := *looks
	benchtest.Press(m, "up", "down")
	if *looks > was+4 {
		t.Error("it rests, and another key makes it go on")
	}
	if cmd = benchtest.Update(m, benchtest.Message("enter")); cmd == nil {
		t.Fatal("Enter does not go on")
	}
	benchtest.OnRow(t, m, "searching")
	cmd = benchtest.Update(m, cmd())
	if cmd == nil {
		t.Fatal("it goes on for one slice alone")
	}
	benchtest.Update(m, benchtest.Message("enter"))
	if cmd = benchtest.Update(m, cmd()); cmd != nil || !strings.Contains(m.Says, "rests") {
		t.Errorf("Enter does not stop it: %s", m.Says)
	}
	benchtest.OnRow(t, m, "not every lay-up was tried")
}

// Where the bench is not told to search, nothing goes on by itself.
func TestNothingIsSearchedUnasked(t *testing.T) {
	shorttest.Turn(t)
	m, _ := searched(t, 0)
	for cmd := benchtest.Update(m, benchtest.Message("right")); cmd != nil; cmd = benchtest.Update(m, cmd()) {
		if slice(m) {
			t.Fatal("it searches")
		}
	}
}

// What a search finds comes behind all there was: every row keeps its place and its letter, the cursor its
// row, and what is proposed stays. A note offers what is better.
func TestFoundLayUpsMoveNothing(t *testing.T) {
	m, _ := searched(t, 400*time.Millisecond)
	key, lacks := worsened(t, alone(m))
	cmd := benchtest.Update(m, benchtest.Message("right"))
	before, proposed := keysOf(m), m.Sheet.Branches[m.Branch].As
	benchtest.OnRow(t, m, "make  ")
	for cmd != nil {
		cmd = benchtest.Update(m, cmd())
		p := m.Page(m.ListWidth())
		if at := p.Rows[m.At(p)].Key; at != "make" {
			t.Fatalf("the cursor is on %q", at)
		}
	}
	now := keysOf(m)
	last := len(before) - 1 // how the figures were made: the last row of every step
	if len(now) <= len(before) || !slices.Equal(now[:last], before[:last]) {
		t.Fatalf("before\n%s\nnow\n%s", strings.Join(before, "\n"), strings.Join(now, "\n"))
	}
	holdSame := func(a, b model.Layer) bool { return slices.Equal(a.Of, b.Of) }
	if after := m.Sheet.Branches[m.Branch].As; !slices.EqualFunc(proposed, after, holdSame) {
		t.Errorf("proposed was %v, and now is %v", proposed, after)
	}
	p := m.Sheet.Proposals[key]
	found := p.Options[p.Shown:]
	at := slices.IndexFunc(found, func(o sheet.Option) bool { return unit.Written(o.Plan.Over) == unit.Written(lacks.Plan.Over) })
	if at < 0 {
		t.Fatal("the better lay-up is not found again")
	}
	letter := string(p.Letter(p.Shown + at))
	benchtest.OnRow(t, m, "  "+letter+"  ")
	if note := benchtest.OnRow(t, m, "not all were tried"); !strings.Contains(note.Text, " is ") {
		t.Errorf("nothing offers it: %q", note.Text)
	}
	if row := benchtest.OnRow(t, m, "  "+letter+"  "); row.Enter == nil {
		t.Error("it cannot be taken")
	} else {
		row.Enter(m)
	}
	if m.Sheet.Branches[m.Branch].Proposed || benchtest.OnRow(t, m, "= "+letter+"  ").Key == "" {
		t.Errorf("it is not laid: %s", m.Says)
	}
}

// A changed branch drops the search of what it was, and nothing of it is taken for another question.
func TestChangedBranchDropsTheSearch(t *testing.T) {
	m, _ := searched(t, 400*time.Millisecond)
	cmd := benchtest.Update(alone(m), benchtest.Message("right"))
	if cmd == nil {
		t.Fatal("it does not search")
	}
	was := bundle.PlanKey(m.Sheet, m.Branch)
	m.Change(m.H.EditWire(0, func(w *model.Wire) { w.Size = "20" }), "")
	known := maps.Clone(m.Sheet.Proposals)
	next := benchtest.Update(m, cmd()) // the slice of before comes in
	now := bundle.PlanKey(m.Sheet, m.Branch)
	if _, has := m.Sheet.Proposals[now]; now == was || has || len(m.Sheet.Proposals) != len(known) {
		t.Fatalf("what was searched for another question is taken: %d and %d", len(m.Sheet.Proposals), len(known))
	}
	if next == nil {
		t.Fatal("the changed branch is not laid")
	}
	for next != nil {
		next = benchtest.Update(m, next())
	}
	p := m.Sheet.Proposals[now]
	pieces := 0
	for _, l := range p.Options[0].Layers {
		pieces += len(l.Of)
	}
	if pieces != 60 || fmt.Sprint(m.Sheet.Proposals[was].Options) != fmt.Sprint(known[was].Options) {
		t.Errorf("%d pieces, and what was known has changed", pieces)
	}
}
