package compare

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"

	"contralay/model/visible"
)

// Result is what a comparison found, and what it was found in: nothing may pass for the same because
// nobody looked.
type Result struct {
	Differences []Difference
	A, B        Count    // of each list, how much the other has too
	Of          string   // what was counted: "cavities", or "wires" where neither list names a cavity
	Unlike      []Apart  // what was not compared
	Called      []string // "connector left.csv is right.csv in B": of connectors that no list names
	Nothing     bool     // both hold wires, and not one cavity, id or signal of either is in the other
	Empty       bool     // neither holds anything
}

// Count is how many of a list were found in the other.
type Count struct {
	Matched int `json:"matched"`
	All     int `json:"all"`
}

// Apart is something that was not compared: what the list named in Lacks, "A" or "B", has no place for; of
// neither where it is "".
type Apart struct {
	What  string `json:"what"`
	Lacks string `json:"lacks,omitempty"`
}

// Complete reports whether everything of both was compared.
func (r *Result) Complete() bool {
	return len(r.Unlike) == 0 && !r.Nothing && r.A.Matched == r.A.All && r.B.Matched == r.B.All
}

// Text gives one line for each difference, or one that says how much is the same; then, last, what
// was matched and what was not compared.
func (r *Result) Text() string {
	var b strings.Builder
	switch {
	case r.Nothing:
		b.WriteString("A and B have nothing in common: no cavity, no wire id and no signal of one is in the other. " +
			"Compare two lists of one harness\n")
	case len(r.Differences) > 0:
		for _, d := range r.Differences {
			b.WriteString(visible.Note(d.Says) + "\n") // a note that breaks forges no line
		}
	case r.Empty:
		b.WriteString("no difference: both are empty\n")
	case r.Complete():
		b.WriteString("no difference\n")
	default:
		b.WriteString("what was compared is the same, but not everything was compared\n")
	}
	return b.String() + visible.Note(r.Matched()) + "\n"
}

// Matched is the last line: what was matched, and what was not compared.
func (r *Result) Matched() string {
	says := fmt.Sprintf("matched: %d of %d %s of A, %d of %d of B", r.A.Matched, r.A.All, r.Of, r.B.Matched, r.B.All)
	for _, c := range r.Called {
		says += "; " + c
	}
	var groups []string
	for _, lacks := range []string{"A", "B", ""} {
		var all []string
		for _, u := range r.Unlike {
			if u.Lacks == lacks && !slices.Contains(all, u.What) {
				all = append(all, u.What)
			}
		}
		switch {
		case len(all) == 0:
		case lacks == "":
			groups = append(groups, all...)
		default:
			groups = append(groups, listed(all)+", which "+lacks+" lacks")
		}
	}
	if len(groups) > 0 {
		says += "; not compared: " + strings.Join(groups, "; ")
	}
	return says
}

// listed is "a", "a and b", "a, b and c".
func listed(all []string) string {
	if n := len(all); n > 1 {
		return strings.Join(all[:n-1], ", ") + " and " + all[n-1]
	}
	return strings.Join(all, "")
}

// JSON gives the same as Text: the differences, what was matched and what was not compared, and the last
// line in words.
func (r *Result) JSON() ([]byte, error) {
	all, apart := r.Differences, r.Unlike
	if all == nil {
		all = []Difference{}
	}
	if apart == nil {
		apart = []Apart{}
	}
	out, err := json.MarshalIndent(struct {
		Differences []Difference `json:"differences"`
		Matched     struct {
			Of string `json:"of"`
			A  Count  `json:"a"`
			B  Count  `json:"b"`
		} `json:"matched"`
		NotCompared []Apart `json:"not_compared"`
		Complete    bool    `json:"complete"`          // everything of both was compared
		Nothing     bool    `json:"nothing_in_common"` // not one cavity, id or signal is in both
		Says        string  `json:"says"`
	}{all, struct {
		Of string `json:"of"`
		A  Count  `json:"a"`
		B  Count  `json:"b"`
	}{r.Of, r.A, r.B}, apart, r.Complete(), r.Nothing, r.Matched()}, "", "  ")
	if err != nil {
		return nil, fmt.Errorf("differences as JSON: %w", err)
	}
	return append(out, '\n'), nil
}
