package face

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper/font"
	"contralay/ui/paper/plot"
)

// strokes are shapes, each in one line, to a thousandth.
func strokes(all []plot.Shape) (out []string) {
	num := func(v unit.Millimetre) string {
		return strings.TrimSuffix(strings.TrimRight(fmt.Sprintf("%.3f", float64(v)+1e-9), "0"), ".")
	}
	pt := func(p plot.Point) string { return num(p.X) + "," + num(p.Y) }
	for _, s := range all {
		says := strings.ToLower(string(s.Layer)) + " " + num(s.Line.Wide)
		if s.Line.Dash != nil {
			says += fmt.Sprint(s.Line.Dash)
		}
		says += []string{"", " white", " light", " middle", " black"}[s.Fill]
		switch {
		case s.Text != "":
			says = fmt.Sprintf("%s %v %s %q", num(s.Size), s.Bold, pt(s.Middle), s.Text)
		case len(s.Way) == 0:
			says += " disc " + pt(s.Middle) + " r " + num(s.Radius)
		case s.Closed:
			says += " closed"
		}
		for _, p := range s.Way {
			says += " " + pt(p)
		}
		out = append(out, says)
	}
	return out
}

func same(t *testing.T, what string, got []plot.Shape, want ...string) {
	t.Helper()
	if all := strokes(got); !slices.Equal(all, want) {
		t.Errorf("%s:\n%s\nwant\n%s", what, strings.Join(all, "\n"), strings.Join(want, "\n"))
	}
}

func thousandth(v unit.Millimetre) string {
	return strings.TrimSuffix(strings.TrimRight(fmt.Sprintf("%.3f", float64(v)+1e-9), "0"), ".")
}

// A cavity of 5 mm at (10, 20) with letters of 4 mm, by hand: the number's base 0.64 sizes below the middle, the letter's 0.32 above it;
// a letter alone stands in the middle, half a
// capital, 4 · 0.7227 / 2, below it. The line under a small letter is 0.14 sizes lower and 0.07 wide.
func TestACavityByHand(t *testing.T) {
	const size = 4
	plain, bold := func(s string) unit.Millimetre {
		return font.Of(false).Width(s,
			size)
	}, func(s string) unit.Millimetre { return font.Of(true).Width(s, size) }
	capital := unit.Millimetre(1480.0 / 2048 * size)
	letter := func(text string, y unit.Millimetre) string {
		return fmt.Sprintf("4 false %s,%s %q", thousandth(10-plain(text)/2), thousandth(y), text)
	}
	number := fmt.Sprintf("4 true %s,17.44 \"101\"", thousandth(10-bold("101")/2))
	under := func(text string, y unit.Millimetre) string {
		return fmt.Sprintf("text 0.28 %s,%s %s,%s", thousandth(10-plain(text)/2), thousandth(y), thousandth(10+plain(text)/2),
			thousandth(y))
	}
	for _, c := range []struct {
		what   string
		name   string
		number string
		in     Cavity
		want   []string
	}{
		{"wired", "A", "101", Cavity{}, []string{"connector 0.3 white disc 10,20 r 5", number, letter("A", 21.28)}},
		{"no room for its number", "A", "", Cavity{Number: "101"}, []string{"connector 0.3 white disc 10,20 r 5",
			letter("A", 20-capital/2)}},
		{"spare", "A", "", Cavity{Use: Spare}, []string{"connector 0.3[1.6 1] white disc 10,20 r 5", letter("A", 20-capital/2)}},
		{"kept free", "A", "", Cavity{Use: Reserved}, []string{"connector 0.3[0.1 1] light disc 10,20 r 5", letter("A", 20-capital/2)}},
		{"empty", "A", "", Cavity{Use: Blank}, []string{"connector 0.3 light disc 10,20 r 5", letter("A", 20-capital/2)}},
		{"large", "A", "101", Cavity{Large: true}, []string{"connector 0.9 white disc 10,20 r 4.7", number, letter("A", 21.28)}},
		{"small letter", "a", "101", Cavity{}, []string{"connector 0.3 white disc 10,20 r 5", number, letter("a", 21.28),
			under("a", 20.72)}},
		{"small letter alone", "aa", "", Cavity{}, []string{"connector 0.3 white disc 10,20 r 5", letter("aa", 20-capital/2),
			under("aa", 20-capital/2-0.56)}},
	} {
		s := &plot.Sheet{}
		f := Face{In: map[string]Cavity{c.name: c.in}}
		f.put(s, disc{catalogue.Place{Cavity: c.name}, plot.Point{X: 10, Y: 20}, 5}, c.number, size)
		same(t, c.what, s.Shapes, c.want...)
	}
}

// Whether words have room in a disc, by hand: a letter alone by its half width and half of a capital and of what hangs below it; with a
// number the letter by
// what it reaches above the middle and the number by what it reaches below, more where a sign hangs.
func TestRoomInADisc(t *testing.T) {
	const size = 4
	capital := 1480.0 / 2048
	for _, c := range []struct {
		letter, number string
		wide, high     float64 // of what reaches farthest
	}{
		{"A", "", float64(font.Of(false).Width("A", size)), (capital/2 + 0.11) * size},
		{"A", "1", float64(font.Of(false).Width("A", size)), (0.32 + capital) * size},
		{"A", "101234", float64(font.Of(true).Width("101234", size)), 0.64 * size},
		{"A", "10123g", float64(font.Of(true).Width("10123g", size)), 0.86 * size},
		{"WWWW", "101", float64(font.Of(false).Width("WWWW", size)), (0.32 + capital) * size},
	} {
		r := unit.Millimetre(math.Hypot(c.wide/2, c.high) + 0.48) // 0.12 sizes to the line
		for more, want := range map[unit.Millimetre]bool{0.001: true, -0.001: false} {
			if got := fits(disc{radius: r + more}, c.letter, c.number, size); got != want {
				t.Errorf("%q and %q have room in %v mm: %v", c.letter, c.number, r+more, got)
			}
		}
	}
	for _, sign := range strings.Split("gjpqyQ,;()[]|", "") {
		if fits(disc{radius: 4.6}, "A", "101"+sign, 4) == fits(disc{radius: 9}, "A", "101"+sign, 4) {
			t.Errorf("%s does not hang", sign)
		}
	}
}

// The box and the discs of faces, by hand. The box of a rim of 30 mm is a millimetre wider at each side and 4 mm higher at the top, and
// reaches 40 mm toward the boot. A
// rim of 92 mm and a box of 94: 46 mm.
func TestDiscsByHand(t *testing.T) {
	if got := (Face{BootHours: 1}).box(30).High; got.X != 31 || math.Abs(float64(got.Y)-40*math.Sqrt(3)/2) > 1e-9 { // toward 60°
		t.Errorf("a boot to 1: %v", got)
	}
	for hours, want := range map[int]plot.Box{
		0: {Low: plot.Point{X: -31, Y: -31}, High: plot.Point{X: 31, Y: 34}}, 12: {Low: plot.Point{X: -31, Y: -31},
			High: plot.Point{X: 31, Y: 40}},
		3: {Low: plot.Point{X: -31, Y: -31}, High: plot.Point{X: 40, Y: 34}}, 6: {Low: plot.Point{X: -31, Y: -40},
			High: plot.Point{X: 31, Y: 34}},
		9: {Low: plot.Point{X: -40, Y: -31}, High: plot.Point{X: 31, Y: 34}},
	} {
		if got := (Face{BootHours: hours}).box(30); got != want {
			t.Errorf("a boot to %d: %v, by hand %v", hours, got, want)
		}
	}
	place := func(name string, x, y float64) catalogue.Place { return catalogue.Place{Cavity: name, X: x, Y: y} }
	for _, c := range []struct {
		what   string
		places []catalogue.Place
		wide   unit.Millimetre
		want   string
	}{
		// Three at (−1, 0), (1, 0), (1, 1): the nearest are 2, 1 and 1 apart. 45.7 mm hold 1 + 0.94 units, or what lies at 1 and 9 mm;
		// of (1, 1): √2 + 0.47, or √2 and 9: 36.7 / 1.414 = 25.951.
		{"three", []catalogue.Place{place("A", -1, 0), place("B", 1, 0), place("C", 1, 1)}, 94,
			"46: A -25.951,0 r 9; B 25.951,0 r 9; C 25.951,25.951 r 9"},
		// At 42 mm the rim is 20: 19.7 / (1.414 + 0.47) = 10.455, more than (19.7 − 9) / 1.414 = 7.566; the discs are 0.47 · 10.455 =
		// 4.914, and of A 9, as 0.94 · 10.455 is more.
		// A alone would have (19.7 − 9) / 1 = 10.7.
		{"close", []catalogue.Place{place("A", -1, 0), place("B", 1, 0), place("C", 1, 1)}, 42,
			"20: A -10.455,0 r 9; B 10.455,0 r 4.914; C 10.455,10.455 r 4.914"},
		{"one in the middle", []catalogue.Place{place("A", 0, 0)}, 42, "20: A 0,0 r 9"},
		{"one beside it", []catalogue.Place{place("A", 1, 0)}, 42, "20: A 13.401,0 r 6.299"}, // 19.7 / 1.47
		{"too small", []catalogue.Place{place("A", 0, 0)}, 20.5, "0:"}, {"just large enough", []catalogue.Place{place("A", 0, 0)}, 20.8,
			"9.4: A 0,0 r 9"},
		{"none", nil, 100, "0:"},
	} {
		discs, rim := Face{Places: c.places}.discs(c.wide)
		got := thousandth(rim) + ":"
		for n, d := range discs {
			got += map[bool]string{true: ";"}[n > 0] + fmt.Sprintf(" %s %s,%s r %s", d.Cavity, thousandth(d.at.X), thousandth(d.at.Y),
				thousandth(d.radius))
		}
		if got != c.want {
			t.Errorf("%s: %s, by hand %s", c.what, got, c.want)
		}
	}
}

// The key and the arrow of the boot on a rim of 20 mm, by hand. The arrow runs from 23 to 29.5 mm, a line of 1 mm to 1 mm before its
// tip; its head goes 3 mm
// back at 155°: 3 · cos 25° = 2.719 and 3 · sin 25° = 1.268 aside. Its word stands beside the middle of it, at 26.25 mm.
func TestKeyAndBoot(t *testing.T) {
	s := &plot.Sheet{}
	key(s, 20)
	same(t, "key", s.Shapes, "connector 0 black closed -2.5,20 2.5,20 2.5,22.5 -2.5,22.5", `3.175 false 3.5,20.6 "key"`)
	wide := font.Of(false).Width("boot", 3.175)
	base := unit.Millimetre(1480.0 / 2048 * 3.175 / 2)
	word := func(x, y unit.Millimetre) string {
		return fmt.Sprintf("3.175 false %s,%s \"boot\"", thousandth(x-wide/2), thousandth(y-base))
	}
	for _, c := range []struct {
		hours int
		box   plot.Box
		want  []string
	}{
		// To the right: the word above it by half a size and 1.5 mm, 3.0875; upward: at its left by half of its width and 1.5 mm.
		{3, plot.Box{Low: plot.Point{X: -99, Y: -99}, High: plot.Point{X: 99, Y: 99}},
			[]string{"connector 1 23,0 28.5,0", "connector 0 black closed 29.5,0 26.781,1.268 26.781,-1.268", word(26.25, 3.0875)}},
		{12, plot.Box{Low: plot.Point{X: -99, Y: -99}, High: plot.Point{X: 99, Y: 99}},
			[]string{"connector 1 0,23 0,28.5", "connector 0 black closed 0,29.5 -1.268,26.781 1.268,26.781", word(-wide/2-1.5, 26.25)}},
		// At the edge of the paper it is moved onto it.
		{3, plot.Box{Low: plot.Point{X: -99, Y: -99}, High: plot.Point{X: 27, Y: 4}},
			[]string{"connector 1 23,0 28.5,0", "connector 0 black closed 29.5,0 26.781,1.268 26.781,-1.268", word(27-wide/2, 4-1.5875)}},
		{12, plot.Box{Low: plot.Point{X: -4, Y: 25}, High: plot.Point{X: 99, Y: 99}},
			[]string{"connector 1 0,23 0,28.5", "connector 0 black closed 0,29.5 -1.268,26.781 1.268,26.781", word(-4+wide/2, 25+1.5875)}},
	} {
		s := &plot.Sheet{Box: c.box}
		boot(s, 20, c.hours)
		if c.hours == 12 && c.box.Low.Y == 25 { // 25 + 1.5875 is more than 26.25
			c.want[2] = word(-4+wide/2, 26.5875)
		}
		same(t, fmt.Sprint("boot to ", c.hours), s.Shapes, c.want...)
	}
	// To 1 o'clock, 60°: off it by 0.866 of the half width and 1.5 mm, and by 0.5 of the half size and 1.5 mm.
	s = &plot.Sheet{Box: plot.Box{Low: plot.Point{X: -99, Y: -99}, High: plot.Point{X: 99, Y: 99}}}
	boot(s, 20, 1)
	off := float64(wide/2+1.5)*math.Sqrt(3)/2 + 3.0875/2
	at := plot.Point{}.Away(60, 26.25).Away(150, unit.Millimetre(off))
	if got := strokes(s.Shapes)[2]; got != word(at.X, at.Y) {
		t.Errorf("%s, by hand %s", got, word(at.X, at.Y))
	}
}

// A whole face of one cavity, by hand: the rim of 20 mm, the key, then the cavity. Letters are as large as have room, from 12 pt down by
// half points; a number without room is told.
func TestAWholeFace(t *testing.T) {
	f := Face{Title: "T", Places: []catalogue.Place{{Cavity: "A"}}, In: map[string]Cavity{"A": {Number: "1"}}}
	d, ok := Draw(f, 42)
	if !ok || d.Sheet.Title != "T" || d.Size != 12*25.4/72 || len(d.Listed) != 0 || d.Sheet.Box != f.box(20) {
		t.Fatalf("%+v", d)
	}
	all := strokes(d.Sheet.Shapes)
	if all[0] != "connector 0.5 disc 0,0 r 20" || !strings.Contains(all[1], "closed -2.5,20") ||
		all[3] != "connector 0.3 white disc 0,0 r 9" || len(all) != 6 {
		t.Errorf("%s", strings.Join(all, "\n"))
	}
	f.BootHours = 3
	if d, _ := Draw(f, 51); len(d.Sheet.Shapes) != 9 || strokes(d.Sheet.Shapes)[3] != "connector 1 23,0 28.5,0" ||
		d.Sheet.Box.High.X != 30 {
		t.Errorf("%s", strings.Join(strokes(d.Sheet.Shapes), "\n"))
	}
	f.BootHours = 0
	// What has room at 10 pt and not at 10.5: 10 pt are 3.528 mm, and they are taken. What has none at 9 pt is told at 9 pt.
	for _, points := range []float64{11.5, 11, 10, 9.5, 9} {
		size := unit.Millimetre(points * 25.4 / 72)
		number := ""
		for fits(disc{radius: 9}, "A", number+"1", size) {
			number += "1"
		}
		if fits(disc{radius: 9}, "A", number, size+25.4/144) {
			continue // nothing tells these two apart
		}
		f.In["A"] = Cavity{Number: number}
		if d, ok := Draw(f, 42); !ok || math.Abs(float64(d.Size-size)) > 1e-9 || len(d.Listed) != 0 {
			t.Errorf("%q: in %v, by hand %v; told %v", number, d.Size, size, d.Listed)
		}
		if points == 9 {
			f.In["A"] = Cavity{Number: number + "1"}
			if d, ok := Draw(f, 42); !ok || math.Abs(float64(d.Size-size)) > 1e-9 || strings.Join(d.Listed, "") != "A" ||
				len(d.Sheet.Shapes) != 5 {
				t.Errorf("%q: %+v", number, d)
			}
		}
	}
	// The least width: at one mm less the number has no room.
	f = Face{Places: []catalogue.Place{{Cavity: "A", X: -1}, {Cavity: "B", X: 1}},
		In: map[string]Cavity{"A": {Number: "12345"}, "B": {Number: "1"}}}
	least := Least(f, 4, 300)
	at := func(wide unit.Millimetre) bool {
		discs, _ := f.discs(wide)
		return len(discs) > 0 && fits(discs[0], "A", "12345", 4) && fits(discs[1], "B", "1", 4)
	}
	if least != unit.Millimetre(int(least)) || !at(least) || at(least-1) {
		t.Errorf("%v, with room %v, one less %v", least, at(least), at(least-1))
	}
	if got := Least(f, 4, 30); got != 30 {
		t.Errorf("%v", got)
	}
	if got := Least(Face{}, 4, 50); got != 50 {
		t.Errorf("%v", got)
	}
}
