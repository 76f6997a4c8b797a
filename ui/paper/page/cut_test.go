package page

import (
	"fmt"
	"strings"
	"testing"

	"contralay/model/unit"
)

// rowsOf are rows of heights; one behind whose height stands a + stays with the next.
func rowsOf(text string) []Row {
	var out []Row
	for _, f := range strings.Fields(text) {
		high := 0.0
		_, _ = fmt.Sscan(strings.TrimSuffix(f, "+"), &high)
		out = append(out, Row{HTML: "#", High: unit.Millimetre(high), KeepNext: strings.HasSuffix(f, "+")})
	}
	return out
}

// How many rows fit, by hand: one at least; none that stays with the next is the last where that can be.
func TestHowManyRowsFit(t *testing.T) {
	for _, c := range []struct {
		rows string
		room unit.Millimetre
		want int
	}{
		{"", 9, 0}, {"5 5 5", 15, 3}, {"5 5 5", 14.9, 2}, {"5 5 5", 10, 2}, {"5 5 5", 4, 1}, {"5 5+ 5", 10, 1}, {"5+ 5+ 5", 10, 2},
		{"5 5+ 5 5", 15, 3},
		{"5 5+", 10, 2}, {"5+ 5", 5, 1}, {"20 5", 10, 1}, {"5 5 5+ 5+ 5", 20, 2},
	} {
		if got := fitting(rowsOf(c.rows), c.room); got != c.want {
			t.Errorf("of %s %d fit into %v, want %d", c.rows, got, c.room, c.want)
		}
	}
	if got := sum(rowsOf("5 2.5 1")); got != 8.5 {
		t.Errorf("%v", got)
	}
	if got := filled(rowsOf("5 5 5+ 5 5"), 10); len(got) != 3 || len(got[0]) != 2 || len(got[1]) != 2 || len(got[2]) != 1 {
		t.Errorf("%v", got)
	}
}

// A block in columns, by hand: as even as its order allows, its head over each; cut where a page ends; its first rows stay together.
func TestColumnsAndCuts(t *testing.T) {
	cut := func(rows string, columns int) *Cut {
		return &Cut{Rows: rowsOf(rows), Columns: columns, HeadHigh: 3, Wide: 40, Gutter: 5, Open: "<", Head: "h", Close: ">"}
	}
	for _, c := range []struct {
		rows    string
		columns int
		want    string // rows of each column
		high    unit.Millimetre
		first   unit.Millimetre
	}{
		{"5 5 5 5", 1, "4", 23, 8}, {"5 5 5 5", 0, "4", 23, 8}, {"5 5 5 5", 2, "2 2", 13, 8}, {"5 5 5", 2, "2 1", 13, 8}, {"5 5 5", 3,
			"1 1 1", 8, 8},
		{"5+ 5 5 5", 2, "2 2", 13, 13}, {"20 5 5", 2, "1 2", 23, 23}, {"5+ 5+ 5 5", 1, "4", 23, 18}, {"5 5", 4, "1 1", 8, 8},
	} {
		x := cut(c.rows, c.columns)
		columns, high := x.spread(len(x.Rows))
		var got []string
		for _, column := range columns {
			got = append(got, fmt.Sprint(len(column)))
		}
		if strings.Join(got, " ") != c.want || high != c.high || x.first() != c.first {
			t.Errorf("%s in %d: %v, %v high, first %v; want %s, %v, %v", c.rows, c.columns, got, high, x.first(), c.want, c.high, c.first)
		}
		b := &Block{Cut: x, High: 99}
		if b.high() != c.high || (&Block{High: 99}).high() != 99 {
			t.Errorf("%s: %v high", c.rows, b.high())
		}
	}
	for _, c := range []struct {
		rows    string
		columns int
		room    unit.Millimetre
		now     int
		high    unit.Millimetre
	}{
		{"5 5 5 5", 1, 23, 4, 23}, {"5 5 5 5", 1, 22, 3, 18}, {"5 5 5 5", 1, 7.9, 0, 0}, {"5 5+ 5 5", 1, 14, 1, 8}, {"5+ 5+ 5", 1, 14,
			0, 0},
		{"5 5 5 5", 2, 8, 2, 8}, {"5 5 5 5", 2, 13, 4, 13}, {"5 5 5 5 5", 2, 13, 4, 13}, {"20 5", 1, 22, 0, 0}, {"20 5", 1, 23, 1, 23},
	} {
		text, high, rest := cut(c.rows, c.columns).part(c.room)
		left := 0
		if rest != nil {
			left = len(rest.Rows)
		}
		if n := strings.Count(string(text), "#"); n != c.now || high != c.high || n+left != len(strings.Fields(c.rows)) ||
			c.now == 4 && left == 0 && rest != nil {
			t.Errorf("%s in %d on %v: %d rows, %v high, %d left; want %d, %v", c.rows, c.columns, c.room, n, high, left, c.now, c.high)
		}
	}
	if text, _, _ := cut("5 5 5", 2).part(50); string(text) != `<div class="beside"><div style="width:40.00mm;margin-left:0.00mm"><h##></div>`+
		`<div style="width:40.00mm;margin-left:5.00mm"><h#></div></div>` {
		t.Errorf("%s", text)
	}
	if text, high := cut("5 5", 1).all(); string(text) != "<h##>" || high != 13 {
		t.Errorf("%s %v", text, high)
	}
}
