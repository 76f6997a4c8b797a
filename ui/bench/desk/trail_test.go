package desk

import (
	"fmt"
	"runtime"
	"testing"

	"contralay/model"
	"contralay/model/shorttest"
	"contralay/model/unit"
)

// many is a harness of so many wires.
func many(wires int) *model.Harness {
	h := &model.Harness{Branches: []model.Branch{{ID: "B"}}}
	for k := range wires {
		h.Wires = append(h.Wires, model.Wire{ID: fmt.Sprintf("w%d", k), Size: "22"})
	}
	return h
}

// held is the memory in use.
func held() uint64 {
	var m runtime.MemStats
	runtime.GC()
	runtime.ReadMemStats(&m)
	return m.HeapAlloc
}

// 5,000 edits of 100 wires, of 400 in the long form, keep what they changed, some 2,000 bytes each, and not 5,000
// harnesses; all of them are undone and done again.
func TestHistoryKeepsWhatChanged(t *testing.T) {
	shorttest.Turn(t)
	const edits = 5000
	wires := 100
	if shorttest.Long() {
		wires = 400
	}
	h := many(wires)
	var past History
	before := held()
	now := h
	for k := range edits {
		past.Record(now)
		now = now.EditWire(k*7%wires, func(w *model.Wire) { w.Amps = model.Some(unit.Ampere(k + 1)) })
	}
	if grown := int64(held()) - int64(before); grown > edits*2000 {
		t.Errorf("%d bytes an edit", grown/edits)
	}
	if len(past.past.near) > nearest {
		t.Errorf("%d harnesses are kept whole", len(past.past.near))
	}
	last := now
	for past.Steps() > 0 {
		now = past.back(now)
	}
	if !now.Same(h) || past.Undone() != edits {
		t.Errorf("undone, it is not what it was; %d can be done again", past.Undone())
	}
	if grown := int64(held()) - int64(before); grown > edits*2000 {
		t.Errorf("undone, %d bytes an edit", grown/edits)
	}
	for past.Undone() > 0 {
		now = past.forth(now)
	}
	if !now.Same(last) || past.Steps() != edits {
		t.Error("done again, it is not what it was")
	}
	past.Record(now)
	if past.Undone() != 0 {
		t.Error("a change leaves something to be done again")
	}
	runtime.KeepAlive(h)
}
