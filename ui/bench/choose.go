package bench

import (
	"fmt"
	"slices"
)

// choice is one thing to choose from a list.
type choice struct {
	value string
	says  string
	used  int // how often this harness has it; those come first
	why   []reason
	rank  int // put before others for another reason
	more  func() string
}

// chooseScreen lists what could be taken: what this harness uses already first,
// oftenest first, then the rest as given. other opens a field for what is not listed.
// there says whether what it is chosen for is still there: an undo may take it away.
func chooseScreen(what string, there func(m *Model) bool, list func(m *Model) []choice, now func(m *Model) string, take func(m *Model, value string), other *field) screen {
	return screen{name: what, safe: true, pick: true, page: func(m *Model, w int) page {
		if !there(m) {
			return page{empty: "what this was for is gone; Esc goes back"}
		}
		all := list(m)
		slices.SortStableFunc(all, func(a, b choice) int { return b.used + b.rank - a.used - a.rank })
		p := page{lines: []string{"Choose " + what + "; what this harness uses stands first."}, empty: "nothing to choose from; Esc goes back"}
		for _, c := range all {
			in := "  "
			if c.value == now(m) {
				in, p.start = "= ", len(p.rows)
			}
			used := ""
			if c.used > 0 {
				used = fmt.Sprintf("   %d here", c.used)
			}
			v := c.value
			p.rows = append(p.rows, row{key: v, text: in + c.says + used, detail: "Enter takes it", more: c.more, why: c.why, enter: func(m *Model) {
				m.back()
				take(m, v)
			}})
		}
		if other != nil {
			f := *other
			f.set = func(m *Model, text string) error {
				if err := other.set(m, text); err != nil {
					return err
				}
				m.back()
				return nil
			}
			p.rows = append(p.rows, row{key: "other", text: "  another: type it", field: &f})
		}
		return p
	}}
}

// counted is how often each value comes.
func counted(values []string) map[string]int {
	out := map[string]int{}
	for _, v := range values {
		out[v]++
	}
	return out
}
