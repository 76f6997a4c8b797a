package model

import (
	"slices"

	"contralay/model/unit"
)

// The record of a build: what was done at each step, what was tested, and out of which lots.

// Ticked is one step of a run as it was ticked. A step that was ticked, undone and ticked
// again has one of each: what was done stays on record.
type Ticked struct {
	Key    string
	At     Opt[string] // day and time
	By     Opt[string]
	What   Opt[What]   // what was done, as the sheet had it then
	Sheet  Opt[What]   // what the sheet had when somebody kept it as it was built: not asked for again
	Undone Opt[string] // the reason; a step that was undone counts no more
	SoFar  []string    // of a step that is begun and not done: the pieces that are; nil of one that is done. It is replaced, never changed
}

// Begun reports whether a record is of a step that is begun and not done.
func (t *Ticked) Begun() bool { return len(t.SoFar) > 0 }

// What is what a step made: enough to see whether the sheet still has it so. Each kind of
// step fills in what it has. It is read and replaced, never changed in place.
type What struct {
	Spec, Size, Colour Opt[string] // of a wire
	Part               Opt[string] // of a splice, a cover, a moulded part
	Place              Opt[string] // of a splice: its breakout and the branch that it lies along
	Hand               Opt[Hand]
	Members            []string // wires of a unit or a splice, pieces of a layer, joints of a mix, stops of a hold
	Ends               []string // cavities and what is in each: "A 101"; where the drain of a unit ends
	Fillers            Opt[int]
	FillerMM           Opt[unit.Millimetre]
	BindMM             Opt[unit.Millimetre]
	MM                 Opt[unit.Millimetre] // as cut; of a layer its branch; of a splice its offset
	FinishedMM         Opt[unit.Millimetre] // of a wire, loops in, tails out
	FromMM, ToMM       Opt[unit.Millimetre] // where a cover lies
	LayMM              Opt[unit.Millimetre]
	OverMM             Opt[unit.Millimetre]
	Path               []string          // of a wire: its branches
	PathMM             []unit.Millimetre // and how long each was
}

// Test is one test of a build: of a net, a feed or a crimp that was pulled, in the unit that
// it was read in; Limit is in that unit too. One without a reading and without a fault has passed.
// The last test of a thing at a step is the one that counts.
type Test struct {
	Net, Feed, Pull       Opt[string]
	Step                  Opt[string] // of the run: a net is tested bare and with its contacts in
	Fault                 Opt[string] // what was wrong, in words: "does not ring"
	Ohm, Milliohm, Megohm Opt[float64]
	Volt, Newton          Opt[float64]
	Limit                 Opt[float64]
	Instrument, At, By    Opt[string]
}

// Lot is what a part or a reel of a build was taken from.
type Lot struct {
	Of      string // the part, or specification and size of a reel
	Lot     string // the number on its label
	Expires Opt[string]
	At, By  Opt[string]
}

// Did reports whether a step counts as done: ticked, in a record of its own or by key alone
// as older files have it, and not undone.
func (b *Build) Did(key string) bool {
	if slices.Contains(b.Done, key) {
		return true
	}
	t := b.TickOf(key)
	return t != nil && !t.Begun()
}

// SoFar are the pieces that are done of a step that is begun; none of one that is done.
func (b *Build) SoFar(key string) []string {
	if t := b.TickOf(key); t != nil && !slices.Contains(b.Done, key) {
		return t.SoFar
	}
	return nil
}

// TickOf is the record of a step that is done, or begun, and was not undone; nil where there is
// none.
func (b *Build) TickOf(key string) *Ticked {
	for k := len(b.Steps) - 1; k >= 0; k-- {
		if t := &b.Steps[k]; t.Key == key && !t.Undone.Set {
			return t
		}
	}
	return nil
}

// Keys are the steps that count as done, each once.
func (b *Build) Keys() []string {
	var out []string
	met := map[string]bool{}
	add := func(key string) {
		if !met[key] {
			out, met[key] = append(out, key), true
		}
	}
	for _, key := range b.Done {
		add(key)
	}
	for _, t := range b.Steps {
		if !t.Undone.Set && !t.Begun() {
			add(t.Key)
		}
	}
	return out
}

// Tick writes a step down as done, in place of what was begun of it; one that counts already stays
// as it is.
func (b *Build) Tick(t Ticked) {
	if b.Did(t.Key) {
		return
	}
	if begun := b.TickOf(t.Key); begun != nil {
		*begun = t
		return
	}
	b.Steps = append(b.Steps, t)
}

// Begin writes pieces of a step down as done, each once. t is the record of the step: what it is to
// make, when and by whom the last piece was done.
func (b *Build) Begin(t Ticked, pieces ...string) {
	if b.Did(t.Key) || len(pieces) == 0 {
		return
	}
	t.SoFar = slices.Clone(b.SoFar(t.Key))
	for _, p := range pieces {
		if !slices.Contains(t.SoFar, p) {
			t.SoFar = append(t.SoFar, p)
		}
	}
	if begun := b.TickOf(t.Key); begun != nil {
		t.What, t.Sheet = begun.What, begun.Sheet // as the sheet had it when it was begun
		*begun = t
		return
	}
	b.Steps = append(b.Steps, t)
}

// TakeOff takes one piece off a step that is begun; the last takes its record away.
func (b *Build) TakeOff(key, piece string) {
	for k := len(b.Steps) - 1; k >= 0; k-- {
		t := &b.Steps[k]
		if t.Key != key || t.Undone.Set || !slices.Contains(t.SoFar, piece) {
			continue
		}
		t.SoFar = slices.DeleteFunc(slices.Clone(t.SoFar), func(p string) bool { return p == piece })
		if len(t.SoFar) == 0 {
			b.Steps = slices.Delete(b.Steps, k, k+1)
		}
		return
	}
}

// Undo takes a step back, or what is begun of it, with the reason. Its record stays and counts no more; a step that an
// older file has by key alone gets a record that says it was undone.
func (b *Build) Undo(key, reason string) {
	if !b.Did(key) && b.TickOf(key) == nil {
		return
	}
	if b.TickOf(key) == nil {
		b.Steps = append(b.Steps, Ticked{Key: key, Undone: Some(reason)})
	}
	for t := b.TickOf(key); t != nil; t = b.TickOf(key) {
		t.Undone = Some(reason)
	}
	b.Done = slices.DeleteFunc(b.Done, func(k string) bool { return k == key })
	b.Signed = slices.DeleteFunc(b.Signed, func(s Signature) bool { return s.Step == key })
}
