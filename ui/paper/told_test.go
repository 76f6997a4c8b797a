package paper

import (
	"strings"
	"testing"

	"contralay/calc/formula/learn"
	"contralay/model/catalogue"
	"contralay/ui/paper/list"
)

// What the readings of one group teach, line by line, by hand.
func TestLessonsInWords(t *testing.T) {
	base := learn.Lesson{Group: "over, 2 layers", N: 12, Least: 10, Bounded: true, Bias: 0.031, Low: 0.02, High: 0.042,
		Confidence: 0.95, Spread: 0.014,
		Enough: true, Matters: true}
	with := func(f func(l *learn.Lesson)) learn.Lesson { l := base; f(&l); return l }
	const bounded = "over, 2 layers: 12 readings, measured +3.1 % of the prediction (+2.0 % to +4.2 % at 95 %), spread 1.4 %"
	for _, c := range []struct {
		l    learn.Lesson
		want string
	}{
		{learn.Lesson{Group: "g"}, "g: 0 readings, none that counts"},
		{with(func(l *learn.Lesson) { l.Bounded, l.Enough, l.Bias = false, false, -0.02 }),
			"over, 2 layers: 12 readings, measured -2.0 % of the prediction|" +
				"  too few: 10 at least; nothing is corrected"},
		{with(func(l *learn.Lesson) { l.Matters = false }), bounded +
			"|  no bias that stands out from the spread: accepting it corrects the band alone"},
		{base, bounded + "|  enough to correct by"},
		{with(func(l *learn.Lesson) {
			l.Outliers, l.LeftOut, l.Skipped = []learn.Outlier{{Of: "a", Ratio: 1.1}}, []learn.Outlier{{Of: "b", Ratio: 0.9}, {Of: "c",
				Ratio: 1}}, 2
		}), bounded + "|  enough to correct by|  odd one out: a, +10.0 % of the prediction; look at it before you accept, or leave it " +
			"out by its name|" +
			"  left out: b, -10.0 % of the prediction|  left out: c, 0.0 % of the prediction|  2 skipped: no two sizes above zero"},
	} {
		if got := strings.Join(Lesson(c.l), "|"); got != c.want {
			t.Errorf("%s\nwant %s", got, c.want)
		}
	}
	if _, ok := Accepted(with(func(l *learn.Lesson) { l.Enough, l.Matters = false, false }), "", ""); ok {
		t.Error("too few are accepted")
	}
	if c, ok := Accepted(base, "2026-05-11", "readings"); !ok || c.Of != "over, 2 layers" || c.Readings != 12 || c.Low != 0.02 ||
		c.High != 0.042 ||
		c.On != "2026-05-11" || c.From != "readings" || c.Spread <= 0 {
		t.Errorf("%+v %v", c, ok)
	}
	cat := &catalogue.Catalogue{Corrections: []catalogue.Correction{{Of: "g", Bias: 0.02, Spread: 0.011, Readings: 9, On: "2025-01-02"},
		{Of: "h", Bias: 1},
		{Of: "g", Bias: -0.01, Spread: 0.02, Readings: 12, On: "2026-03-04"}, {Of: "w", Bias: 0.02, Readings: 9, On: "2025-01-02"},
		{Of: "w", Withdrawn: true}}}
	for of, want := range map[string]string{
		"g": "g: -1.0 %, spread 2.0 %, 12 readings; accepted: +2.0 % of 9 2025-01-02, then -1.0 % of 12 2026-03-04",
		"w": "w: not corrected; +2.0 % of 9 2025-01-02, then withdrawn", "x": "x: not corrected; "} {
		if got := InUse(cat, of); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// What a file of lists makes of its cells, by hand: RFC 4180 or with decimal commas, no formula, a sheet's name in each row.
func TestFilesOfLists(t *testing.T) {
	table := list.Table{Head: []string{"a"}, Rows: [][]string{{"page"}}, Sheet: "K1 B", Filed: list.Filed{Head: []string{"wire", "OD"},
		Figure: []bool{false, true}, Rows: [][]string{{"1.5", "1.5"}, {"=1+1", "-0.25"}, {"a;b,c", "1.2.3"}, {"-", "="}}}}
	for _, c := range []struct {
		marks Marks
		want  string
	}{
		{RFC4180(), "wire,OD,build sheet|1.5,1.5,K1 B|'=1+1,-0.25,K1 B|\"a;b,c\",1.2.3,K1 B|-,'=,K1 B|"},
		{Continental(), "wire;OD;build sheet|1.5;1,5;K1 B|'=1+1;-0,25;K1 B|\"a;b,c\";1.2.3;K1 B|-;'=;K1 B|"},
	} {
		got, err := CSVWith(table, c.marks)
		if text := strings.ReplaceAll(string(got), "\r\n", "|"); err != nil || text != c.want {
			t.Errorf("%v: %s\nwant %s", err, text, c.want)
		}
	}
	table.Filed, table.Sheet = list.Filed{}, ""
	if got, err := CSV(table); err != nil || string(got) != "a\r\npage\r\n" {
		t.Errorf("%v %q", err, got)
	}
	for cell, want := range map[string]string{"": "", "a": "a", "=": "'=", "+": "+", "-": "-", "+1.5": "+1.5", "-2": "-2",
		"-2x": "'-2x", "@a": "'@a", "+a": "'+a",
		"a=": "a=", "\tx": "'\tx", "1": "1", "--": "'--"} {
		if got := Harmless(cell); got != want {
			t.Errorf("%q becomes %q, want %q", cell, got, want)
		}
	}
	if got := string(safe([]byte("a\nb"))); got != "a\nb" {
		t.Errorf("%q", got)
	}
	if got := string(safe([]byte("a\x1b[2Jb\u202ec\nd"))); strings.ContainsAny(got, "\x1b\u202e") || !strings.HasPrefix(got, "a") ||
		!strings.HasSuffix(got, "c\nd") ||
		!strings.Contains(got, "[2Jb") {
		t.Errorf("%q", got)
	}
}
