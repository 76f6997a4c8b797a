package desk

import (
	"bytes"
	"testing"

	"pgregory.net/rapid"

	"contralay/model"
	"contralay/model/edittest"
	"contralay/model/file"
)

// Whatever edits follow one another, the history undoes them back to where they began and does
// them all again, byte for byte.
func TestHistoryUndoesAnyEdit(t *testing.T) {
	d, err := file.Load("../../../testdata/every-key.toml")
	if err != nil {
		t.Fatal(err)
	}
	text := func(h *model.Harness) []byte { return file.Encode(file.Document{Harness: *h}) }
	rapid.Check(t, func(t *rapid.T) {
		var past History
		first := &d.Harness
		now := edittest.Some(t, first, 2*nearest+5, func(_ string, was, _ *model.Harness) { past.Record(was) })
		last := text(now)
		for past.Steps() > 0 {
			now = past.back(now)
		}
		if got := text(now); !bytes.Equal(got, text(first)) {
			t.Fatalf("all undone, it is\n%s", got)
		}
		for past.Undone() > 0 {
			now = past.forth(now)
		}
		if got := text(now); !bytes.Equal(got, last) {
			t.Fatalf("all done again, it is\n%s", got)
		}
	})
}
