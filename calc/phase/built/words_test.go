package built

import "testing"

// One is one and several are several, in every sentence that counts steps.
func TestCountsInWords(t *testing.T) {
	named := []Difference{{Says: "the sheet is revision B"}}
	for again, want := range map[int]string{0: "the sheet is revision B: no step to do again",
		1: "the sheet is revision B: 1 step to do again",
		2: "the sheet is revision B: 2 steps to do again"} {
		if got := (Comparison{Differences: named, Again: again}).Says(); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	for n, want := range map[int]string{1: "of 1 step that is done the file does not hold what was done",
		2: "of 2 steps that are done the file does not hold what was done"} {
		if got := unknown(n); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// Three differences are named, of five two more are counted.
func TestMoreDifferencesAreCounted(t *testing.T) {
	all := []Difference{{Says: "a"}, {Says: "b"}, {Says: "c"}, {Says: "d"}, {Says: "e"}}
	for n, want := range map[int]string{3: "a; b; c: 2 steps to do again", 4: "a; b; c; 1 more: 2 steps to do again",
		5: "a; b; c; 2 more: 2 steps to do again"} {
		if got := (Comparison{Differences: all[:n], Again: 2}).Says(); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}
