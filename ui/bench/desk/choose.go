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
				if len(m.Stack) == deep && m.Top() == KindChoice && m.Title() == what { // what was taken may have opened a page
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

// Numbered lets a row be taken by digits and Enter, wherever the cursor is: rows get numbers, and a number takes
// its row. Where what rows stand for are numbers themselves, such as wires or sizes, they get no others: digits
// are the wire or the size.
func Numbered(rows []Row) []Row {
	out := slices.Clone(rows)
	own := slices.ContainsFunc(rows, func(r Row) bool { _, err := strconv.ParseFloat(r.Key, 64); return err == nil })
	find := func(text string) (int, error) {
		at := slices.IndexFunc(rows, func(r Row) bool { return own && r.Key == text })
		if at < 0 && !own {
			n, err := strconv.Atoi(text)
			if err != nil || n < 1 || n > len(rows) {
				return 0, fmt.Errorf("there is no row %s: 1 to %d", text, len(rows))
			}
			at = n - 1
		}
		if at < 0 {
			return 0, fmt.Errorf("%s is not in the list", text)
		}
		return at, nil
	}
	wide := len(fmt.Sprint(len(rows)))
	for n := range out {
		if !own {
			out[n].Text = fmt.Sprintf("%*d %s", wide, n+1, out[n].Text)
		}
		if out[n].Field != nil {
			continue // digits are its own value
		}
		label := "take the row of number"
		if own {
			label = "take"
		}
		out[n].Field = &Field{Label: label, Number: true, Set: func(m *Model, text string) error {
			at, err := find(text)
			if err == nil {
				rows[at].Enter(m)
			}
			return err
		}}
	}
	return out
}
