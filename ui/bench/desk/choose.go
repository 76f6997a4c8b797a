package desk

import (
	"fmt"
	"slices"
	"strconv"
)

// Choice is one thing to choose from a list.
type Choice struct {
	Value string
	Says  string
	Used  int // how often this harness has it; those come first
	Why   []Reason
	Rank  int // put before others for another reason
	More  func() string
}

// ChooseScreen lists what could be taken: what this harness uses already first,
// oftenest first, then the rest as given. other opens a field for what is not listed.
// there says whether what it is chosen for is still there: an undo may take it away. Rows carry
// numbers: whoever types one and Enter takes that row without walking to it.
func ChooseScreen(what string, there func(m *Model) bool, list func(m *Model) []Choice, now func(m *Model) string,
	take func(m *Model, value string), other *Field) Screen {
	return Screen{Kind: KindChoice, Title: what, Page: func(m *Model, w int) Page {
		if !there(m) {
			return Page{Empty: "What this list was for is gone. Esc goes back"}
		}
		all := list(m)
		slices.SortStableFunc(all, func(a, b Choice) int { return b.Used + b.Rank - a.Used - a.Rank })
		p := Page{Lines: []string{"Choose " + what + ". What this harness uses comes first."},
			Empty: "Nothing to choose from. Esc goes back"}
		var rows []Row
		for _, c := range all {
			in := "  "
			if c.Value == now(m) {
				in, p.Start = "= ", len(rows)
			}
			used := ""
			if c.Used > 0 {
				used = fmt.Sprintf("   %d here", c.Used)
			}
			v := c.Value
			rows = append(rows, Row{Key: v, Text: in + c.Says + used, Detail: "Enter takes it", More: c.More, Why: c.Why,
				Enter: func(m *Model) {
					m.Back()
					take(m, v)
				}})
		}
		p.Rows = Numbered(rows)
		if other != nil {
			f := *other
			f.Set = func(m *Model, text string) error {
				deep := len(m.Stack)
				if err := other.Set(m, text); err != nil {
					return err
				}
				if len(m.Stack) == deep && m.Top() == KindChoice { // what was taken may have opened a page
					m.Back()
				}
				return nil
			}
			p.Rows = append(p.Rows, Row{Key: "other", Text: "  another: type it", Field: &f})
		}
		return p
	}}
}

// Counted is how often each value comes.
func Counted(values []string) map[string]int {
	out := map[string]int{}
	for _, v := range values {
		out[v]++
	}
	return out
}

// Numbered puts numbers before rows that are chosen by Enter: digits and Enter take the row of
// that number, wherever the cursor is. Where what a row stands for is a number itself, such as a wire
// or a size, that number takes it.
func Numbered(rows []Row) []Row {
	out := slices.Clone(rows)
	wide := len(fmt.Sprint(len(rows)))
	for n := range out {
		text := out[n].Text
		out[n].Text = fmt.Sprintf("%*d %s", wide, n+1, text)
		if out[n].Field != nil {
			continue // digits are its own value
		}
		out[n].Field = &Field{Label: "take the row of number", Number: true, Set: func(m *Model, text string) error {
			if at := slices.IndexFunc(rows, func(r Row) bool { return r.Key == text && r.Enter != nil }); at >= 0 {
				rows[at].Enter(m) // a wire, a size, a number that is what the row stands for
				return nil
			}
			k, err := strconv.Atoi(text)
			if err != nil || k < 1 || k > len(rows) {
				return fmt.Errorf("there is no row %s: 1 to %d", text, len(rows))
			}
			rows[k-1].Enter(m)
			return nil
		}}
	}
	return out
}
