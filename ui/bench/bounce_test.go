package bench_test

import (
	"testing"
	"time"

	"contralay/model"
	"contralay/ui/bench"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
)

// The same key within the set time counts once; another key, a burst and the arrows
// are never held back, and it is off until it is set.
func TestBounce(t *testing.T) {
	clock := time.Unix(0, 0)
	with := func(d time.Duration) *desk.Model {
		m := benchtest.Open(t, "example.toml")
		m.Cfg.Now, m.Bounce.Within = func() time.Time { return clock }, d
		return m
	}
	after := func(m *desk.Model, ms int, keys ...string) *desk.Model {
		for _, k := range keys {
			clock = clock.Add(time.Duration(ms) * time.Millisecond)
			benchtest.Press(m, k)
		}
		return m
	}
	for _, c := range []struct {
		name   string
		bounce time.Duration
		ms     int
		keys   []string
		want   string
	}{
		{"off", 0, 10, []string{"1", "1"}, "11"},
		{"on", 80 * time.Millisecond, 10, []string{"1", "1", "1", "1"}, "1"},
		{"slow enough", 80 * time.Millisecond, 90, []string{"1", "1"}, "11"},
		{"a worn key that chatters on is measured from the press that was taken", 80 * time.Millisecond, 30, []string{"1", "1", "1", "1"},
			"11"},
		{"another key between", 80 * time.Millisecond, 10, []string{"1", "2", "1"}, "121"},
		{"one burst", 80 * time.Millisecond, 10, []string{"1.11"}, "1.11"},
	} {
		t.Run(c.name, func(t *testing.T) {
			if m := after(with(c.bounce), c.ms, c.keys...); m.Entry == nil || m.Entry.Draft() != c.want {
				t.Errorf("draft %+v, want %q", m.Entry, c.want)
			}
		})
	}
	m := after(with(80*time.Millisecond), 5, "down", "down", "down")
	if m.At(m.Page(m.ListWidth())) != 2+3 { // a first visit begins on the first wire
		t.Errorf("arrows are held back: row %d", m.At(m.Page(m.ListWidth())))
	}
	if m = after(m, 5, "h", "h"); m.Top() != "help" || m.Says == "" {
		t.Error("a key that counts once says nothing")
	}
	m = with(0)
	for range 40 {
		bench.BounceRow(m).Step(m, 1)
	}
	if m.Bounce.Within != desk.MostBounce {
		t.Errorf("it goes to %v", m.Bounce.Within)
	}
}

// In a run a second bare Enter within 300 ms counts as none, however often it comes and though
// writing took its time; the Enter that ends a reading counts, as do digits and +; elsewhere, and
// where it is turned off, every Enter counts.
func TestEnterBouncesInARun(t *testing.T) {
	clock := time.Unix(1000, 0)
	open := func(within time.Duration) *desk.Model {
		c := benchtest.Config(t, "example.toml")
		c.RunBounce, c.Now = within, func() time.Time { return clock }
		m := benchtest.OpenWith(t, "example.toml", c)
		benchtest.GoTo(t, m, "to build", "@bench run")
		benchtest.Press(m, "enter", "7", "enter")
		m.Change(m.H.EditBuild("1", func(b *model.Build) { b.EachTest = model.Opt[bool]{} }), "") // it asks for no lot
		return m
	}
	ticks := func(m *desk.Model) int {
		n := 0
		for _, b := range m.H.Builds {
			n += len(b.Keys())
		}
		return n
	}
	after := func(m *desk.Model, ms int, key string) {
		clock = clock.Add(time.Duration(ms) * time.Millisecond)
		benchtest.Press(m, key)
	}
	m := open(desk.MostBounce)
	after(m, 20, "enter") // the press that opened the run, once more
	if ticks(m) != 0 || m.Says != "Enter came twice within 300 ms and counts once" {
		t.Fatalf("%d ticks: %s", ticks(m), m.Says)
	}
	after(m, 400, "enter")
	for range 20 { // held down: it comes 30 times a second
		after(m, 33, "enter")
	}
	if ticks(m) != 1 {
		t.Errorf("held down it ticked %d", ticks(m))
	}
	after(m, 299, "enter")
	after(m, 301, "enter")
	if ticks(m) != 2 {
		t.Errorf("%d ticks after 299 and 301 ms, want one more", ticks(m))
	}
	after(m, 5, "+")
	after(m, 5, "+")
	if ticks(m) != 4 {
		t.Errorf("+ twice: %d ticks", ticks(m))
	}
	for len(m.Sheet.Branches[m.Branch].Layers) > 0 && m.Here().Ticks && m.Entry == nil { // to a layer, which takes readings
		if p := m.Page(m.ListWidth()); p.Rows[0].Field != nil {
			break
		}
		after(m, 5, "+")
	}
	was := ticks(m)
	for _, key := range []string{"enter", "2", ".", "2", "enter"} { // an Enter, and a reading at once
		after(m, 5, key)
	}
	if m.Entry != nil || len(m.H.Builds[0].Readings) != 1 || len(m.H.Builds[0].Readings[0].OverMM) != 1 {
		t.Errorf("the reading was not taken: %s, %+v", m.Says, m.H.Builds[0].Readings)
	}
	after(m, 5, "enter") // the calliper sent it twice
	if ticks(m) != was && len(m.Sheet.Branches[m.Branch].Layers[0].Members) > 1 {
		t.Errorf("%d ticks, were %d", ticks(m), was)
	}

	m = open(0)
	for range 3 {
		after(m, 1, "enter")
	}
	if ticks(m) != 3 {
		t.Errorf("turned off, %d ticks of three", ticks(m))
	}
	c := benchtest.Config(t, "example.toml")
	c.RunBounce, c.Now = desk.MostBounce, func() time.Time { return clock }
	m = benchtest.OpenWith(t, "example.toml", c)
	benchtest.Press(m, "enter", "enter") // a wire, and its first row
	if m.Says != "" && m.Says[:5] == "Enter" {
		t.Errorf("outside a run: %s", m.Says)
	}
}
