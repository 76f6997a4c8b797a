package model

import (
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

func bundle() *Harness {
	return &Harness{
		Terminations: []Termination{{ID: "A"}, {ID: "Z"}, {ID: "Y"}},
		Breakouts:    []Breakout{{ID: "J"}, {ID: "K"}},
		Wires:        []Wire{{ID: "1"}, {ID: "2", Return: Some("3")}, {ID: "3"}, {ID: "4"}},
		Units:        []Unit{{ID: "U", Wires: []string{"4"}}},
		Branches: []Branch{
			{ID: "T", From: "A", To: "J", Layers: []Layer{{Of: []string{"U"}}, {Of: []string{"1", "2"}}, {Of: []string{"3"}}}},
			{ID: "R", From: "J", To: "K"}, {ID: "L", From: "K", To: "Z"}, {ID: "S", From: "Y", To: "J"},
		},
	}
}

func of(h *Harness) string {
	var parts []string
	for _, l := range h.Branches[0].Layers {
		parts = append(parts, strings.Join(l.Of, ","))
	}
	return strings.Join(parts, " | ")
}

func TestMove(t *testing.T) {
	for _, c := range []struct {
		name, id  string
		to        int
		want, err string
	}{
		{"outward", "1", 2, "U | 2 | 3,1", ""},
		{"into a new layer", "1", 3, "U | 2 | 3 | 1", ""},
		{"the last of a layer takes the layer along", "3", 1, "U | 1,2,3", ""},
		{"out of the centre", "U", 1, "1,2,U | 3", ""},
		{"out of the lay-up", "1", -1, "U | 2 | 3", ""},
		{"what was not laid", "9", 2, "U | 1,2 | 3,9", ""},
		{"nowhere", "1", 1, "U | 1,2 | 3", ""},
		{"past the end", "1", 5, "U | 1,2 | 3", "there is no layer 5"},
	} {
		t.Run(c.name, func(t *testing.T) {
			h := bundle()
			before := of(h)
			n, err := h.Move(0, c.id, c.to)
			if got := of(n); got != c.want || (err != nil && err.Error() != c.err) || (err == nil) != (c.err == "") {
				t.Errorf("got %q %v, want %q %q", got, err, c.want, c.err)
			}
			if of(h) != before {
				t.Error("the harness before the edit changed with it")
			}
		})
	}
	h := bundle()
	h.Branches[0].Layers[1].Locked = Some(true)
	if _, err := h.Move(0, "3", 1); err == nil || err.Error() != "layer 1 is locked: unlock it first" {
		t.Errorf("a locked layer took a component: %v", err)
	}
	h = bundle()
	h.Branches[0].Layers[1].Pinned = []string{"1"}
	if _, err := h.Move(0, "1", 2); err == nil || err.Error() != "1 is pinned to layer 1: unpin it first" {
		t.Errorf("a pinned component moved: %v", err)
	}
}

func TestRemoveWire(t *testing.T) {
	h := bundle()
	if _, err := h.RemoveWire(3); err == nil || !strings.Contains(err.Error(), "unit U") {
		t.Errorf("a wire of a unit went: %v", err)
	}
	if _, err := h.RemoveWire(2); err == nil || !strings.Contains(err.Error(), "return of wire 2") {
		t.Errorf("a return went: %v", err)
	}
	n, err := h.RemoveWire(0)
	if err != nil || len(n.Wires) != 3 || of(n) != "U | 2 | 3" {
		t.Errorf("got %v %q %v", n.Wires, of(n), err)
	}
	if d := cmp.Diff(bundle(), h); d != "" {
		t.Errorf("the harness before the edit changed:\n%s", d)
	}
}

func TestBetween(t *testing.T) {
	x := NewIndex(bundle())
	for _, c := range []struct {
		from, to string
		want     []int
		ok       bool
	}{{"A", "Z", []int{0, 1, 2}, true}, {"Z", "A", []int{2, 1, 0}, true}, {"Y", "A", []int{3, 0}, true}, {"J", "J", nil, true},
		{"A", "Q", nil, false}} {
		got, ok := x.Between(c.from, c.to)
		if !slices.Equal(got, c.want) || ok != c.ok {
			t.Errorf("%s to %s: %v %v", c.from, c.to, got, ok)
		}
	}
}

func TestNextID(t *testing.T) {
	h := bundle()
	h.Wires = append(h.Wires, Wire{ID: "101"}, Wire{ID: "102"}, Wire{ID: "CRK"})
	for like, want := range map[string]string{"101": "103", "3": "5", "CRK": "CRK2", "SP0": "SP1",
		"99999999999999999999": "999999999999999999992"} {
		if got := h.NextID(like); got != want {
			t.Errorf("after %s comes %s, want %s", like, got, want)
		}
	}
}

func TestFeed(t *testing.T) {
	on := func(h *Harness) string {
		var parts []string
		for _, f := range h.Feeds {
			parts = append(parts, f.ID+" "+strings.Join(f.Wires, ","))
		}
		return strings.Join(parts, " | ")
	}
	h := bundle()
	a := h.AddFeed(Feed{Device: Some(ProtectionBlade)}, "1")
	b := a.AddFeed(Feed{}, "2")
	c := b.Feed("1", 1)
	d, err := c.RemoveWire(0)
	for _, x := range []struct {
		name string
		h    *Harness
		want string
	}{
		{"none", h, ""}, {"the first", a, "F1 1"}, {"a second", b, "F1 1 | F2 2"}, {"moved over", c, "F1  | F2 2,1"},
		{"on it already", c.Feed("1", 1), "F1  | F2 2,1"},
		{"taken off", c.Feed("1", -1), "F1  | F2 2"}, {"gone with its wire", d, "F1  | F2 2"},
		{"feed taken away", c.RemoveFeed(0), "F2 2,1"}, {"its number again", c.RemoveFeed(0).AddFeed(Feed{}, "3"), "F2 2,1 | F1 3"},
		{"an edit", b.EditFeed(0, func(f *Feed) { f.ID = "M" }), "M 1 | F2 2"}, {"the one before the edit", b, "F1 1 | F2 2"},
	} {
		if got := on(x.h); got != x.want || err != nil {
			t.Errorf("%s: %q, want %q (%v)", x.name, got, x.want, err)
		}
	}
}
