package add

import (
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/model"
)

// What is proposed is written on every laid branch that has no cover, and is then no proposal any more; what the
// file gives stays, but a sheath that does not fit is replaced and named. A branch that waits is laid first.
func TestProposed(t *testing.T) {
	s := bench(t)
	waits := slices.ContainsFunc(s.H.Branches, func(b model.Branch) bool { return len(b.Layers) == 0 })
	o := Proposed(s)
	done := calc.Complete(o.H, s.Base, nil)
	covered := 0
	for i := range o.H.Branches {
		b := &o.H.Branches[i]
		laid, has := len(done.Branches[i].Layers) > 0, len(b.Covers) > 0
		switch {
		case laid && !has && !slices.Contains(o.Bare, b.ID):
			t.Errorf("%s has no cover and is not named", b.ID)
		case has && len(s.H.Branches[i].Covers) == 0:
			covered++
			if done.Branches[i].Sheath.Proposed || done.Branches[i].Sheath.Verdict.Stops() {
				t.Errorf("%s: %+v", b.ID, done.Branches[i].Sheath.Part)
			}
		}
	}
	if covered != o.Sheaths || !waits || covered == 0 {
		t.Errorf("%d sheaths are written and %d told; a branch waited: %v", covered, o.Sheaths, waits)
	}
	for i := range o.H.Terminations {
		want := s.H.Terminations[i].Boot.Set || StraightBoot(s.Cat, s.H.Terminations[i].Insert.V) != ""
		if o.H.Terminations[i].Boot.Set != want {
			t.Errorf("%s: boot %+v", o.H.Terminations[i].ID, o.H.Terminations[i].Boot)
		}
	}
	if again := Proposed(done); again.H != done.H || again.Text() != "" {
		t.Errorf("proposed once more: %s", again.Text())
	}
	// A tube that cannot be put on is replaced by one that can, and the branch is named.
	first := slices.IndexFunc(o.H.Branches, func(b model.Branch) bool { return len(b.Covers) > 0 })
	tight := o.H.EditBranch(first, func(b *model.Branch) { b.Covers[0].Part = model.Some("AS23053/16 3.2") })
	mended := Proposed(calc.Complete(tight, s.Base, nil))
	if id := tight.Branches[first].ID; !slices.Equal(mended.Replaced, []string{id}) ||
		!strings.Contains(mended.Text(), "other sheaths on "+id) ||
		mended.H.Branches[first].Covers[0].Part != o.H.Branches[first].Covers[0].Part {
		t.Errorf("%v %s", mended.Replaced, mended.Text())
	}
}
