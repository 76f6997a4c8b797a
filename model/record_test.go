package model

import (
	"slices"
	"testing"
)

// A step counts once, whether a file has it by key alone, in a record of its own, or both; what
// is undone counts no more and stays on record with its reason; a change to one build leaves the
// harness before it as it was.
func TestRecordOfSteps(t *testing.T) {
	h := &Harness{Builds: []Build{{Serial: "1", Done: []string{"cut 1", "cut 2"},
		Signed: []Signature{{Step: "hold bare", By: "7"}}}}}
	was := h.Builds[0]
	n := h.EditBuild("1", func(b *Build) {
		b.Tick(Ticked{Key: "cut 2", What: Some(What{Size: Some("22")})}) // done by key alone already
		b.Tick(Ticked{Key: "cut 3", What: Some(What{Size: Some("22")})})
		b.Tick(Ticked{Key: "cut 3", What: Some(What{Size: Some("20")})}) // and once more
		b.Tick(Ticked{Key: "hold bare"})
	})
	b := &n.Builds[0]
	if got := b.Keys(); !slices.Equal(got, []string{"cut 1", "cut 2", "cut 3", "hold bare"}) || len(b.Steps) != 2 {
		t.Errorf("%q, %+v", got, b.Steps)
	}
	n = n.EditBuild("1", func(b *Build) {
		b.Steps = append(b.Steps, Ticked{Key: "cut 2"}) // a file may have both
		for _, key := range []string{"cut 1", "cut 2", "cut 3", "hold bare", "cut 9"} {
			b.Undo(key, "crossed")
		}
	})
	b = &n.Builds[0]
	if len(b.Keys()) != 0 || len(b.Done) != 0 || len(b.Signed) != 0 || len(b.Steps) != 4 {
		t.Errorf("after undoing: %+v", b)
	}
	for _, s := range b.Steps {
		if s.Undone.V != "crossed" {
			t.Errorf("%+v", s)
		}
	}
	n = n.EditBuild("1", func(b *Build) { b.Tick(Ticked{Key: "cut 3", What: Some(What{Size: Some("20")})}) })
	if tick := n.Builds[0].TickOf("cut 3"); tick == nil || tick.What.V.Size.V != "20" || len(n.Builds[0].Steps) != 5 {
		t.Errorf("done again: %+v", n.Builds[0].Steps)
	}
	if len(h.Builds[0].Steps) != 0 || !slices.Equal(h.Builds[0].Done, was.Done) || len(h.Builds[0].Signed) != 1 {
		t.Errorf("the harness before changed: %+v", h.Builds[0])
	}
}
