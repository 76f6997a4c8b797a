package laycard

import (
	"regexp"
	"strings"
	"testing"

	"contralay/calc/phase/threading"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/ui/paper/list"
)

// The matrix of three ends, by hand: the parts in their order, each with a cross under the ends it goes over and a number that counts
// them; the sheaths that go last over one end alone in one row; the label sleeves; and each boot under its own end.
func TestMatrixOfThreading(t *testing.T) {
	h := &model.Harness{Terminations: []model.Termination{{ID: "A", Boot: model.Some("boot-a")}, {ID: "B"}, {ID: "C",
		Boot: model.Some("boot-c")}}}
	m := list.Maker{H: h, S: &sheet.Sheet{H: h, Index: model.NewIndex(h), Terms: make([]sheet.Term, 3)}}
	part := func(of, name string, own bool, ends ...int) Thread {
		return Thread{Threaded: threading.Threaded{Of: of, Part: name, What: sheet.PartSheath}, Own: own, Ends: ends}
	}
	threads := []Thread{part("T2", "p1", false, 1, 2), part("T3", "p2", true, 2), part("T0", "p3", false), part("T1", "p4", false, 0),
		part("T1", "p5", true, 0)}
	tags := regexp.MustCompile(`<[^>]*>`)
	for _, c := range []struct {
		ends []int
		want string
	}{
		{[]int{0, 1, 2}, "1|T2|p1|-|X|X 2|T0|p3|-|-|- 3|T1|p4|X|-|- |||X|-|X ||||| |A|boot-a|X|-|- |C|boot-c|-|-|X"},
		{[]int{0}, "1|T0|p3|- 2|T1|p4|X |||X ||| |A|boot-a|X"},
		{[]int{1}, "1|T2|p1|X 2|T0|p3|- |||"},
	} {
		var got []string
		for k, r := range matrix(m, threads, c.ends).Cut.Rows {
			var cells []string
			for _, cell := range strings.Split(string(r.HTML), "</td>") {
				if strings.Contains(cell, "<td") {
					cells = append(cells, tags.ReplaceAllString(cell, ""))
				}
			}
			text := ""
			for n, cell := range cells {
				switch {
				case n == 2 && strings.HasPrefix(cell, "last, the sheath"), n == 2 && cell == "label sleeve":
					cell = ""
				case n > 2 && cell == "" && cells[2] != "label sleeve":
					cell = "-"
				}
				text += "|" + strings.Fields(cell + " ,")[0]
			}
			got = append(got, strings.ReplaceAll(text[1:], ",", ""))
			if r.High < 4.5 {
				t.Errorf("row %d is %v high", k, r.High)
			}
		}
		if text := strings.Join(got, " "); text != c.want {
			t.Errorf("%v:\n%s, want\n%s", c.ends, text, c.want)
		}
	}
}
