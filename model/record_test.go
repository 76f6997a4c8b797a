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

// A step that is begun has its pieces and does not count as done; done, its record takes the place of
// what was begun. A piece goes on once, comes off alone, and the harness before stays as it was.
func TestStepBegun(t *testing.T) {
	h := &Harness{Builds: []Build{{Serial: "1", Done: []string{"lay T1 0"}}}}
	var after []*Harness
	do := func(f func(b *Build)) *Build {
		h = h.EditBuild("1", f)
		after = append(after, h)
		return &h.Builds[0]
	}
	what := Some(What{Members: []string{"110", "240", "121"}})
	b := do(func(b *Build) { b.Begin(Ticked{Key: "lay T1 0"}, "110") }) // done by key alone already
	if len(b.Steps) != 0 {
		t.Errorf("%+v", b.Steps)
	}
	do(func(b *Build) { b.Begin(Ticked{Key: "lay T1 1", What: what}) }) // nothing is on: nothing is begun
	do(func(b *Build) { b.Begin(Ticked{Key: "lay T1 1", What: what, At: Some("1")}, "110") })
	b = do(func(b *Build) { b.Begin(Ticked{Key: "lay T1 1", What: Some(What{}), At: Some("2")}, "240", "110") })
	if got := b.SoFar("lay T1 1"); !slices.Equal(got, []string{"110", "240"}) || b.Did("lay T1 1") || len(b.Steps) != 1 ||
		b.Steps[0].At.V != "2" || len(b.Steps[0].What.V.Members) != 3 || slices.Contains(b.Keys(), "lay T1 1") {
		t.Errorf("begun: %+v", b.Steps)
	}
	b = do(func(b *Build) { b.TakeOff("lay T1 1", "110"); b.TakeOff("lay T1 1", "no such") })
	if got := b.SoFar("lay T1 1"); !slices.Equal(got, []string{"240"}) {
		t.Errorf("taken off: %v", got)
	}
	b = do(func(b *Build) { b.Tick(Ticked{Key: "lay T1 1", What: what, At: Some("3")}) })
	if !b.Did("lay T1 1") || b.SoFar("lay T1 1") != nil || len(b.Steps) != 1 || b.Steps[0].At.V != "3" {
		t.Errorf("done: %+v", b.Steps)
	}
	do(func(b *Build) { b.Begin(Ticked{Key: "pin P1"}, "A") })
	b = do(func(b *Build) { b.Undo("pin P1", "crossed"); b.Undo("lay T1 1", "crossed") })
	if b.Did("lay T1 1") || b.TickOf("pin P1") != nil || b.Steps[1].Undone.V != "crossed" ||
		!slices.Equal(b.Steps[1].SoFar, []string{"A"}) {
		t.Errorf("undone: %+v", b.Steps)
	}
	do(func(b *Build) { b.Begin(Ticked{Key: "pin P1"}, "B") })
	b = do(func(b *Build) { b.TakeOff("pin P1", "B") })
	if b.TickOf("pin P1") != nil || len(b.Steps) != 2 { // the record that was undone stays
		t.Errorf("the last is taken off: %+v", b.Steps)
	}
	if got := after[3].Builds[0].SoFar("lay T1 1"); !slices.Equal(got, []string{"110", "240"}) {
		t.Errorf("a harness of before has changed: %v", got)
	}
}
