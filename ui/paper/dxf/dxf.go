// Package dxf writes a drawing as DXF of release 12, in ASCII, one unit a millimetre: the form
// that every reader takes. Ways are polylines, discs circles, texts are texts; each is on its
// layer. Fills are left out, since release 12 has none that readers agree on.
package dxf

import (
	"fmt"
	"strconv"
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"

	"contralay/model/unit"
	"contralay/ui/paper/font"
	"contralay/ui/paper/plot"
)

// writer writes pairs: a group code on a line, its value on the next.
type writer struct{ strings.Builder }

func (w *writer) pair(code int, value string) { fmt.Fprintf(w, "%3d\n%s\n", code, value) }

func (w *writer) number(code int, v unit.Millimetre) {
	w.pair(code, strconv.FormatFloat(float64(v), 'f', 4, 64))
}

func (w *writer) point(code int, p plot.Point) {
	w.number(code, p.X)
	w.number(code+10, p.Y)
	w.number(code+20, 0)
}

// Line types by name; each is a pattern of lines and gaps.
const (
	whole  = "CONTINUOUS"
	dashed = "DASHED"
)

// Bytes is a sheet as DXF.
func Bytes(s *plot.Sheet) []byte {
	w := &writer{}
	w.pair(0, "SECTION")
	w.pair(2, "HEADER")
	w.pair(9, "$ACADVER")
	w.pair(1, "AC1009")
	w.pair(9, "$EXTMIN")
	w.point(10, s.Box.Low)
	w.pair(9, "$EXTMAX")
	w.point(10, s.Box.High)
	w.pair(0, "ENDSEC")
	w.tables()
	w.pair(0, "SECTION")
	w.pair(2, "ENTITIES")
	for k := range s.Shapes {
		w.shape(&s.Shapes[k])
	}
	w.pair(0, "ENDSEC")
	w.pair(0, "EOF")
	return []byte(w.String())
}

// tables are the line types and the layers.
func (w *writer) tables() {
	w.pair(0, "SECTION")
	w.pair(2, "TABLES")
	w.pair(0, "TABLE")
	w.pair(2, "LTYPE")
	w.pair(70, "2")
	for _, t := range []struct {
		name, says string
		dash       []unit.Millimetre
	}{{whole, "Solid line", nil}, {dashed, "Dashed line", []unit.Millimetre{4, -2}}} {
		w.pair(0, "LTYPE")
		w.pair(2, t.name)
		w.pair(70, "64")
		w.pair(3, t.says)
		w.pair(72, "65")
		w.pair(73, strconv.Itoa(len(t.dash)))
		sum := unit.Millimetre(0)
		for _, d := range t.dash {
			sum += max(d, -d)
		}
		w.number(40, sum)
		for _, d := range t.dash {
			w.number(49, d)
		}
	}
	w.pair(0, "ENDTAB")
	w.pair(0, "TABLE")
	w.pair(2, "LAYER")
	w.pair(70, strconv.Itoa(len(plot.Layers)))
	for k, l := range plot.Layers {
		w.pair(0, "LAYER")
		w.pair(2, string(l))
		w.pair(70, "0")
		w.pair(62, strconv.Itoa([...]int{7, 5, 3, 1, 4, 6, 2, 7, 1, 8, 7, 7}[k]))
		w.pair(6, whole)
	}
	w.pair(0, "ENDTAB")
	w.pair(0, "ENDSEC")
}

func (w *writer) entity(kind string, s *plot.Shape) {
	w.pair(0, kind)
	w.pair(8, string(s.Layer))
	if len(s.Line.Dash) > 0 {
		w.pair(6, dashed)
	}
}

func (w *writer) shape(s *plot.Shape) {
	switch {
	case len(s.Way) > 0 && s.Line.Wide <= 0: // a fill alone
	case len(s.Way) > 0:
		w.entity("POLYLINE", s)
		w.pair(66, "1")
		w.point(10, plot.Point{})
		closed := "0"
		if s.Closed {
			closed = "1"
		}
		w.pair(70, closed)
		for _, p := range s.Way {
			w.pair(0, "VERTEX")
			w.pair(8, string(s.Layer))
			w.point(10, p)
		}
		w.pair(0, "SEQEND")
		w.pair(8, string(s.Layer))
	case s.Text != "":
		w.entity("TEXT", s)
		w.point(10, s.Middle)
		w.number(40, s.Size*font.CapShare) // the height of a capital
		w.pair(1, ASCII(s.Text))
		w.number(50, unit.Millimetre(s.Turn))
		w.number(41, narrow)
	default:
		w.entity("CIRCLE", s)
		w.point(10, s.Middle)
		w.number(40, s.Radius)
	}
}

// narrow is how wide the letters of a reader's own face are drawn: so narrow that a text takes
// no more than it does in the face of the PDF. Common practice, no source.
const narrow = 0.75

// signs are signs that have a word of their own in plain ASCII.
var signs = strings.NewReplacer("Ω", "Ohm", "\u2126", "Ohm", "µ", "u", "μ", "u", "°", "deg", "×", "x", "·", ".", "±", "+/-", "−", "-",
	"–", "-", "—", "-",
	"ß", "ss", "ø", "o", "Ø", "O", "æ", "ae", "Æ", "AE", "œ", "oe", "Œ", "OE", "ł", "l", "Ł", "L", "đ", "d", "Đ", "D", "ð", "d",
	"þ", "th", "ı", "i",
	"‘", "'", "’", "'", "“", `"`, "”", `"`, "…", "...")

// ASCII is a text in plain ASCII: accents are left off, and what is no letter of the Latin
// alphabet is its number, as readers of later releases take it.
func ASCII(text string) string {
	var b strings.Builder
	for _, r := range norm.NFD.String(signs.Replace(text)) {
		switch {
		case r >= ' ' && r < 0x7f:
			b.WriteRune(r)
		case unicode.Is(unicode.Mn, r) || r < ' ' || r == 0x7f:
		case r > 0xffff:
			b.WriteByte('?')
		default:
			fmt.Fprintf(&b, `\U+%04X`, r)
		}
	}
	return b.String()
}
