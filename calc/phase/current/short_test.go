package current

import (
	"slices"
	"testing"

	"contralay/calc/formula/protect"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Shorts by hand. A limit of 10 A that opens in 0.02 s lets i² · 0.02 through: at 15 A 4.5 A²s, at 100 A 200 A²s. It passes 10 A for
// ever. Two
// joined outputs have 20 A: 15 A open nothing beyond the splice. A fuse is sure to open from its least current with a longest time on.
func TestShortsByHand(t *testing.T) {
	s := &sheet.Sheet{Wires: make([]sheet.Wire, 3)}
	s.Limits.AmbientC = 20
	for k := range s.Wires {
		s.Wires[k].Entry = catalogue.Wire{AreaMM2: 0.38, RatedC: 200}
	}
	e := s.Wires[0].Entry
	bears, _ := protect.Withstand(e.AreaMM2, s.Limits.AmbientC, e.RatedC)
	limit := protect.Device{Kind: protect.Electronic, Rating: 10, Trip: 0.02}
	fuse := protect.Device{Kind: protect.Blade, Rating: 10}
	need := fuse.NeedsToOpen()
	fuseLets := func(least, most unit.Ampere) unit.AmpereSqSecond { v, _, _ := fuse.LetThrough(least, most); return v }
	for _, c := range []struct {
		name         string
		d            protect.Device
		n            int
		far, near    unit.Ampere
		lets         unit.AmpereSqSecond
		known, never bool
	}{
		{"at the limit", limit, 0, 10, 100, 0, false, true}, {"below it", limit, 0, 9, 100, 0, false, true}, {"above it", limit, 0, 10.5,
			100, 200, true, false},
		{"nearer is not known", limit, 0, 15, 0, 4.5, true, false}, {"nearer is less", limit, 0, 15, 12, 2.88, true, false}, // 12² · 0.02
		{"a near one of less than 1 A", limit, 0, 15, 0.5, 0, false, false},
		{"beyond a splice", limit, 1, 15, 100, 0, false, true}, {"beyond a splice, enough", limit, 1, 21, 100, 200, true, false},
		{"not known", limit, 0, 0, 100, 0, false, false},
		{"a fuse, just enough", fuse, 0, need, 200, fuseLets(need, 200), true, false}, {"a fuse, too little", fuse, 0, need - 0.01, 200, 0,
			false, true},
		{"a fuse, nearer is not known", fuse, 0, 40, 0, fuseLets(40, 1000), true, false},
		{"a fuse, far is more than a hundred times", fuse, 0, 1500, 0, fuseLets(1500, 1500), true, false},
	} {
		s.Feeds = []sheet.Feed{{Device: model.Some(c.d), All: 20, Legs: []int{0}, Beyond: []int{1}, Back: []int{2}, Near: c.near,
			Far: []unit.Ampere{c.far, c.far, c.far}}}
		v := ShortOf(s, 0, c.n, c.n)
		if v.far != c.far || v.Known != c.known || v.never != c.never || !near(float64(v.Lets), float64(c.lets)) {
			t.Errorf("%s: %+v", c.name, v)
		}
		if v.Known && (v.Bears != bears || v.burns != (v.Lets > bears) || v.From != s.Limits.AmbientC) {
			t.Errorf("%s: it bears %v, burns %v; want %v", c.name, v.Bears, v.burns, bears)
		}
		if v.Known && (v.Source == "given in the file") != (c.d.Kind == protect.Electronic) {
			t.Errorf("%s: by %q", c.name, v.Source)
		}
		lets, can, memory, ok := ShortBears(s, 0, c.n)
		if ok != v.Known || lets != v.Lets || can != v.Bears || memory != (v.Standing == catalogue.Memory) {
			t.Errorf("%s: %v, %v, memory %v, known %v; want %+v", c.name, lets, can, memory, ok, v)
		}
		if a, ok := ShortA(s, 0, c.n); a != c.far || ok != (c.far > 0) {
			t.Errorf("%s: a short of %v, %v", c.name, a, ok)
		}
	}
	if _, ok := ShortA(s, 0, 3); ok {
		t.Error("a fourth wire of three")
	}
	if _, _, _, ok := ShortBears(s, 0, 3); ok {
		t.Error("a fourth wire of three bears something")
	}
	s.Feeds[0].Device = model.Opt[protect.Device]{}
	if a, ok := ShortA(s, 0, 0); a != 0 || ok {
		t.Error("a short without a device")
	}
	if _, _, _, ok := ShortBears(s, 0, 0); ok {
		t.Error("nothing opens it, and it is known what that lets through")
	}
	for n, want := range map[int]string{0: "", 1: "a", 6: "a, a, a, a, a, a", 7: "a, a, a, a, a and 2 more",
		9: "a, a, a, a, a and 4 more"} {
		if got := listText(slices.Repeat([]string{"a"}, n)); got != want {
			t.Errorf("%d: %q", n, got)
		}
	}
	w := &s.Wires[0]
	w.Limits = []sheet.Limit{{Amps: 9}, {Amps: 3, Feed: true}, {Amps: 5}, {Amps: 7}}
	if best, ok := boundWithoutFeed(s, 0); !ok || best.Amps != 5 {
		t.Errorf("%+v", best)
	}
	w.Limits = w.Limits[1:2]
	if _, ok := boundWithoutFeed(s, 0); ok {
		t.Error("its feed is taken for another limit")
	}
}

func near(a, b float64) bool { return a-b < 1e-9*(1+b) && b-a < 1e-9*(1+b) }
