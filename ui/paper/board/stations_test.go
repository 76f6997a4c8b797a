package board

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/formula/outline"
	"contralay/calc/query/drawing"
	"contralay/model/unit"
)

// What starts and stops along a branch of 500 mm, by hand: in order, what lies less than 15 mm from the first of a flag in that flag, which
// points at their middle; nothing at the ends of the branch, and nothing of no length.
func TestWhatStartsAndStops(t *testing.T) {
	cover := func(what string, from, to unit.Millimetre) drawing.Cover {
		return drawing.Cover{What: what, From: from, To: to}
	}
	for _, c := range []struct {
		covers []drawing.Cover
		lay    [2]unit.Millimetre
		want   string
	}{
		{nil, [2]unit.Millimetre{}, ""},
		{nil, [2]unit.Millimetre{50, 450}, "50:lay from 50 450:lay to 450"},
		{[]drawing.Cover{cover("tape", 0, 500), cover("braid", 200, 200), cover("sheath", 300, 100)}, [2]unit.Millimetre{0, 400},
			"400:lay to 400"},
		{[]drawing.Cover{cover("sheath", 54, 440)}, [2]unit.Millimetre{40, 450},
			"47:lay from 40/sheath from 54 445:sheath to 440/lay to 450"},
		{[]drawing.Cover{cover("sheath", 55, 440)}, [2]unit.Millimetre{40, 455}, "40:lay from 40 55:sheath from 55 440:sheath to 440 " +
			"455:lay to 455"},
		{[]drawing.Cover{cover("a", 100, 110), cover("b", 114, 120)}, [2]unit.Millimetre{},
			"107:a from 100/a to 110/b from 114 120:b to 120"},
	} {
		var canvas canvas
		canvas.Scale, canvas.Size, canvas.Full = 1, 20, true
		canvas.stations(&drawing.Branch{LengthMM: 500, Measured: true, WidthMM: 8, Line: outline.Line{{Length: 500}}, Covers: c.covers,
			Lay: c.lay})
		var got []string
		for _, f := range canvas.waiting {
			for k := range f.lines {
				f.lines[k] = strings.TrimSuffix(f.lines[k], ".0")
			}
			got = append(got, fmt.Sprintf("%v:%s", float64(f.of.X), strings.Join(f.lines, "/")))
			if f.of.Y != 0 || f.clear != 5 || f.toward != 90 || f.size != 14 || !f.plain {
				t.Errorf("%+v", f)
			}
		}
		if strings.Join(got, " ") != c.want {
			t.Errorf("%v, want %s", strings.Join(got, " "), c.want)
		}
	}
}
