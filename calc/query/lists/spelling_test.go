package lists

import (
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
)

// An end in one spelling: a cavity by its connector, a splice by its name; a shell, what is cut and nothing are none.
func TestEndInOneSpelling(t *testing.T) {
	h := &model.Harness{Terminations: []model.Termination{{ID: "P"}}, Splices: []model.Splice{{ID: "S"}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h)}
	for text, want := range map[string]string{"P:1": "P:1", "S": "S", "shell": "", "cut": "", "": ""} {
		if got := endName(s, text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}
