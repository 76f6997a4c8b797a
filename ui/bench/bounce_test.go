package bench_test

import (
	"testing"
	"time"

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
