package twoside

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Rows makes one table of the two sides of a header, drawn as they lie: its cavities in the middle, or the same headings
// again beside each other. Each side of a row is a cavity of the one connector, and no wire runs between the two.
//
//	Use    | Pin | Pin | Use           Pin | Use  | Pin | Use
//	Supply | 1   | 2   | Ground        1   | Bell | 2   | Lamp
//	Bell   | 3   | 4   | Lamp          3   | Horn | 4   | Fan
func Rows(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows // a person has said where its columns are
	}
	var out []table.Row
	for i := 0; i < len(t.Rows); i++ {
		if k := kindsOf(h, t, i); k != nil {
			end := i + k.lines
			for end < len(t.Rows) && !ends(t.Rows[end]) {
				end++
			}
			if out == nil {
				out = slices.Clone(t.Rows[:i])
			}
			out = append(out, k.rows(t.Rows[i:end])...)
			i = end - 1
			continue
		}
		if made, n := unheaded(t, i); n > 0 {
			if out == nil {
				out = slices.Clone(t.Rows[:i])
			}
			out = append(out, made...)
			i += n - 1
			continue
		}
		halves := halvesOf(h, t, i)
		if halves == nil {
			if out != nil {
				out = append(out, t.Rows[i])
			}
			continue
		}
		if out == nil {
			out = slices.Clone(t.Rows[:i])
		}
		n := 0
		head := headOfSides(t.Rows[i], halves)
		for _, r := range t.Rows[i:] {
			if n > 0 && (r.First || r.Level > 0 || r.Prose || shape.IsText(r)) {
				break
			}
			for k, half := range halves {
				part := r
				if part.Cells = pick(r.Cells, half); n == 0 {
					part.Cells = head
				}
				if k > 0 {
					part.First, part.Ruled = false, false
				}
				if n > 0 && strings.Join(part.Cells, "") != "" || n == 0 && k == 0 {
					out = append(out, part)
				}
			}
			n++
		}
		i += n - 1
	}
	if out == nil {
		return t.Rows
	}
	return out
}

func pick(cells []string, at []int) (out []string) {
	for _, i := range at {
		cell := ""
		if i < len(cells) {
			cell = cells[i]
		}
		out = append(out, cell)
	}
	return out
}

// halvesOf are the columns of both sides of a header, whose headings stand in row i, in one order; nil where it is none.
func halvesOf(h shape.Headings, t *table.Table, i int) [][]int {
	head := t.Rows[i]
	if len(head.Cells) < 4 || len(head.Cells) > 9 || t.Marked && !head.First || shape.HasNumber(head) {
		return nil
	}
	at := make([]int, 0, 9)
	for k, c := range head.Cells {
		if c != "" {
			at = append(at, k)
		}
	}
	n := len(at) / 2
	if len(at) < 4 || len(at)%2 != 0 || n > 4 {
		return nil
	}
	left, right := at[:n], at[n:]
	if strings.EqualFold(head.Cells[left[0]], head.Cells[right[0]]) == strings.EqualFold(head.Cells[left[n-1]], head.Cells[right[0]]) {
		return nil // of most rows nothing is asked further
	}
	turned := slices.Clone(right)
	slices.Reverse(turned)
	same := func(a, b []int) bool {
		return slices.EqualFunc(a, b, func(x, y int) bool { return strings.EqualFold(head.Cells[x], head.Cells[y]) })
	}
	switch {
	case same(left, turned) && !same(left, right):
		right = turned
	case same(left, right) && t.Marked:
	case n == 2 && strings.EqualFold(head.Cells[left[1]], head.Cells[right[0]]):
		right = turned // "Left use | Pin | Pin | Right use"
	case sidesOfOne(h, head, left, turned):
		right = turned
	case sidesOfOne(h, head, left, right):
	default:
		return nil
	}
	if h.HasSides(head) && !h.IsPinMirror(head) {
		return nil
	}
	for k := range left {
		if h.IsPinHeading(head.Cells[left[k]]) && (oneHeader(t.Rows[i+1:], left[k], right[k]) ||
			numbersAndLetters(t.Rows[i+1:], left[k], right[k])) {
			return [][]int{left, right}
		}
	}
	return nil
}

// oneHeader reports whether the numbers in two columns are those of the cavities of one connector: each once, none left out.
func oneHeader(rows []table.Row, a, b int) bool {
	seen := map[int]bool{}
	low, high := 0, 0
	for _, r := range rows {
		if r.First || shape.IsText(r) {
			break
		}
		for _, i := range []int{a, b} {
			if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) {
				continue
			}
			n, err := strconv.Atoi(strings.TrimSpace(r.Cells[i]))
			if err != nil || n < 0 || n > 999 || seen[n] {
				return false
			}
			if len(seen) == 0 {
				low, high = n, n
			}
			seen[n] = true
			low, high = min(low, n), max(high, n)
		}
	}
	return len(seen) >= 4 && high-low+1 == len(seen)
}
