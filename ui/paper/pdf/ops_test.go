package pdf_test

import (
	"bytes"
	"fmt"
	"regexp"
	"strings"
	"testing"

	reader "rsc.io/pdf"

	"contralay/model/unit"
	"contralay/ui/paper/pdf"
	"contralay/ui/paper/plot"
)

// operators are what a page does, one after another, as another program reads them; a string is "…".
func operators(t *testing.T, text []byte) (out []string) {
	t.Helper()
	r, err := reader.NewReader(bytes.NewReader(text), int64(len(text)))
	if err != nil {
		t.Fatal(err)
	}
	reader.Interpret(r.Page(1).V.Key("Contents"), func(stack *reader.Stack, op string) {
		args := make([]string, stack.Len())
		for k := len(args) - 1; k >= 0; k-- {
			switch v := stack.Pop(); v.Kind() {
			case reader.Integer, reader.Real:
				args[k] = fmt.Sprintf("%.2f", v.Float64())
			case reader.String:
				args[k] = "…"
			default:
				args[k] = v.String()
			}
		}
		out = append(out, strings.Join(append(args, op), " "))
	})
	return out
}

// face is the name of a face, which is made of its bytes.
var face = regexp.MustCompile(`/F[0-9a-f]+`)

// one is a page of 72 x 72 points whose shapes lie in 25.4 mm.
func one(shapes ...plot.Shape) []plot.Page {
	return []plot.Page{{Name: "one", Wide: 25.4, High: 25.4, Views: []plot.View{{Of: &plot.Sheet{Shapes: shapes},
		Window: plot.Box{Low: plot.Point{X: 2.54, Y: 2.54}, High: plot.Point{X: 20.32, Y: 22.86}}, Move: plot.Point{X: 2.54, Y: 5.08}}}}}
}

// What a page does, by hand. It is an inch square, 72 points; its window begins 0.1 inch, 7.2 points, from the left and 2.54 mm below
// the top, and is 17.78 x 20.32 mm, 50.4 x 57.6
// points. A way from (2.54, 2.54) is moved to (5.08, 7.62), 14.4 and 21.6 points. Its greys: 88 % are 224 of 255, 0.878. Operators are
// those of ISO 32000-1, table A.1.
func TestWhatAPageDoes(t *testing.T) {
	const i = 25.4
	way := func(line unit.Millimetre, fill plot.Grey, closed bool) plot.Shape {
		return plot.Shape{Line: plot.Line{Wide: line}, Fill: fill, Closed: closed,
			Way: []plot.Point{{X: i / 10, Y: i / 10}, {X: i / 5, Y: i / 10}, {X: i / 5, Y: i / 5}}}
	}
	dashed := way(i/72, plot.Light, true)
	dashed.Line.Dash = []unit.Millimetre{i / 36, i / 72}
	const moved, clip = "14.40 21.60 m|21.60 21.60 l|21.60 28.80 l", "q|7.20 64.80 50.40 -57.60 re|W|n"
	for _, c := range []struct {
		what  string
		shape plot.Shape
		want  string
	}{
		{"a line", way(i/72, plot.None, false), "1.00 w|[] 0.00 d|" + moved + "|S"},
		{"a dashed line round a grey", dashed, "1.00 w|[2 1] 0.00 d|0.88 g|" + moved + "|h|B"},
		{"a fill", way(0, plot.Black, true), "0.00 g|" + moved + "|h|f"},
		{"nothing", way(0, plot.None, true), ""},
		{"no disc", plot.Shape{Middle: plot.Point{X: i / 10, Y: i / 10}, Radius: 1}, ""},
		{"outside", plot.Shape{Line: plot.Line{Wide: 1}, Way: []plot.Point{{X: 30, Y: 5}, {X: 40, Y: 5}}}, ""},
		{"outside by less than its line", plot.Shape{Line: plot.Line{Wide: i / 72}, Way: []plot.Point{{X: 18, Y: 0}, {X: 18, Y: 25.4}}},
			"1.00 w|[] 0.00 d|58.22 14.40 m|58.22 86.40 l|S"},
		{"a text", plot.Shape{Text: "ab", Size: i / 7.2, Middle: plot.Point{X: i / 10, Y: i / 10}},
			"0.00 g|BT|F 10.00 Tf|ET|BT|14.40 21.60 Td|… Tj|ET"},
	} {
		text, err := pdf.Bytes("x", one(c.shape))
		if err != nil {
			t.Fatal(err)
		}
		all := strings.Join(operators(t, text), "|")
		before, body, ok := strings.Cut(all, clip)
		body = face.ReplaceAllString(body, "F")
		if want := strings.TrimSuffix("|"+c.want, "|") + "|Q"; !ok || body != want {
			t.Errorf("%s: %s, by hand %s", c.what, body, want)
		}
		if !strings.Contains("|"+before, "|1.00 J|1.00 j|") { // ends and corners are round
			t.Errorf("%s: it begins with %s", c.what, before)
		}
	}
	// A text that is turned stands in a matrix of its own, whose first four numbers are the cosine and the sine; a heavy one has another
	// face.
	turned := plot.Shape{Text: "ab", Size: 4, Turn: 90, Middle: plot.Point{X: i / 10, Y: i / 10}}
	heavy := plot.Shape{Text: "ab", Size: 4, Bold: true, Middle: plot.Point{X: i / 10, Y: i / 10}}
	disc := plot.Shape{Line: plot.Line{Wide: 1}, Fill: plot.White, Middle: plot.Point{X: i / 10, Y: i / 10}, Radius: i / 36}
	text, _ := pdf.Bytes("x", one(turned, heavy, disc))
	all := strings.Join(operators(t, text), "|")
	// about (14.4, 21.6): x is 14.4 + 21.6, y is 21.6 − 14.4
	if !strings.Contains(all, "|q|0.00 1.00 -1.00 0.00 36.00 7.20 cm|") || strings.Count(all, "q|")-strings.Count(all, "Q|") != 0 &&
		strings.Count(all, "cm") != 1 {
		t.Errorf("turned: %s", all)
	}
	faces := face.FindAllString(all, -1)
	if len(faces) != 2 || faces[0] == faces[1] {
		t.Errorf("faces %v", faces)
	}
	// a disc of 2 points: six curves of 60° each from its right, the first to (14.4 + 2 · cos 60°, 21.6 + 2 · sin 60°)
	_, round, _ := strings.Cut(all, "16.40 21.60 m|")
	for _, to := range []string{"15.40 23.33", "13.40 23.33", "12.40 21.60", "13.40 19.87", "15.40 19.87", "16.40 21.60"} {
		if !strings.Contains(round, " "+to+" c|") {
			t.Errorf("it does not come to %s", to)
		}
	}
	if strings.Count(round, " c|") != 6 || !strings.HasSuffix(round, "|B|Q") {
		t.Errorf("disc: %s", round)
	}
}

// A page has to be larger than nothing and no larger than readers show, to both sides; the title and the maker of the file stand in it,
// and no day but the first of 1970.
func TestPagesThatNoReaderShows(t *testing.T) {
	for _, c := range []struct {
		wide, high unit.Millimetre
		ok         bool
	}{{5080, 10, true}, {10, 5080, true}, {5080.1, 10, false}, {10, 5080.1, false}, {0, 10, false}, {10, 0, false}, {-1, 10,
		false}, {0.5, 0.5, true}} {
		text, err := pdf.Bytes("TT", []plot.Page{{Name: "p", Wide: c.wide, High: c.high}})
		if (err == nil) != c.ok || (len(text) > 0) != c.ok {
			t.Errorf("%v x %v: %v", c.wide, c.high, err)
		}
		if c.ok && (strings.Count(string(text), "D:19700101000000") != 2 || !strings.Contains(string(text), "\xfe\xff\x00T\x00T") ||
			strings.Contains(string(text), "FPDF")) {
			t.Errorf("%.2000s", text)
		}
	}
	if _, err := pdf.Bytes("x", []plot.Page{{Name: "p", Wide: 10, High: 6000}}); err == nil ||
		err.Error() != `page "p" is 10 x 6000 mm: readers of PDF take pages up to 5080 mm` {
		t.Errorf("%v", err)
	}
}
