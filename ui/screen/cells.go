package screen

import (
	"strconv"
	"strings"
	"unicode/utf8"

	"contralay/ui/draw"
)

// look is how a cell looks; the zero value is the terminal's own.
type look struct {
	text, ground colour
	flags        uint16
}

// colour is a colour as ECMA-48 and its relatives write it: nothing for the terminal's own; else
// its kind and its number.
type colour uint32

// The kinds of colour.
const (
	ofSixteen colour = (iota + 1) << 24
	of256
	ofAll
	kinds colour = 0xFF << 24
)

// The flags of a look, by their numbers in ECMA-48 8.3.117: 1 is bold, 7 negative.
const (
	underlined = 1 << 4
	negative   = 1 << 7
	struck     = 1 << 9
	seen       = underlined | negative | struck // those that show on a blank
)

// cell is one character of one cell, and its look.
type cell struct {
	char rune
	look look
}

// blank is a cell with nothing in it.
var blank = cell{char: ' '}

// cells reads a line; ok is false where it holds what is not known to take one cell each on every
// terminal, or a sequence that is no plain colour.
func cells(line string) (out []cell, ok bool) {
	out = make([]cell, 0, 160)
	var pen look
	for i := 0; i < len(line); {
		if line[i] == '\x1b' {
			n := strings.IndexByte(line[i:], 'm')
			if n < 2 || line[i+1] != '[' {
				return nil, false
			}
			if pen, ok = pen.after(line[i+2 : i+n]); !ok {
				return nil, false
			}
			i += n + 1
			continue
		}
		r, n := utf8.DecodeRuneInString(line[i:])
		if !draw.OneCell(r) {
			return nil, false
		}
		c := cell{r, pen}
		if r == ' ' && pen.flags&seen == 0 { // nothing of its text is seen
			c.look.text, c.look.flags = 0, 0
		}
		out = append(out, c)
		i += n
	}
	return out, true
}

// after is a look after the numbers of one sequence.
func (l look) after(numbers string) (look, bool) {
	at := 0
	next := func() (int, bool) {
		if at > len(numbers) {
			return 0, false
		}
		end := strings.IndexByte(numbers[at:], ';')
		if end < 0 {
			end = len(numbers) - at
		}
		text := numbers[at : at+end]
		at += end + 1
		if text == "" {
			return 0, true // a number that is left out is 0
		}
		v, err := strconv.Atoi(text)
		return v, err == nil && v >= 0 && v < 256
	}
	for at <= len(numbers) {
		v, ok := next()
		if !ok {
			return l, false
		}
		switch {
		case v == 0:
			l = look{}
		case v >= 1 && v <= 9:
			l.flags |= 1 << v
		case v == 22:
			l.flags &^= 1<<1 | 1<<2
		case v >= 23 && v <= 29 && v != 26:
			l.flags &^= 1 << (v - 20)
		case v >= 30 && v <= 37:
			l.text = ofSixteen | colour(v-30)
		case v >= 90 && v <= 97:
			l.text = ofSixteen | colour(v-90+8)
		case v >= 40 && v <= 47:
			l.ground = ofSixteen | colour(v-40)
		case v >= 100 && v <= 107:
			l.ground = ofSixteen | colour(v-100+8)
		case v == 39:
			l.text = 0
		case v == 49:
			l.ground = 0
		case v == 38 || v == 48:
			c, ok := extended(next)
			if !ok {
				return l, false
			}
			if v == 38 {
				l.text = c
			} else {
				l.ground = c
			}
		default:
			return l, false
		}
	}
	return l, true
}

// extended reads a colour of 256 or of all, after its 38 or 48.
func extended(next func() (int, bool)) (colour, bool) {
	kind, ok := next()
	if !ok {
		return 0, false
	}
	switch kind {
	case 5:
		n, ok := next()
		return of256 | colour(n), ok
	case 2:
		c := colour(0)
		for range 3 {
			v, ok := next()
			if !ok {
				return 0, false
			}
			c = c<<8 | colour(v)
		}
		return ofAll | c, true
	}
	return 0, false
}

// pen is the look in which the terminal writes, and what is to be written.
type pen struct {
	out []byte
	now look
}

// to changes the look with the fewest numbers.
func (p *pen) to(l look) {
	if l == p.now {
		return
	}
	start := len(p.out)
	p.out = append(p.out, "\x1b["...)
	if l == (look{}) {
		p.out = append(p.out, 'm')
		p.now = l
		return
	}
	first := true
	number := func(n int) {
		if !first {
			p.out = append(p.out, ';')
		}
		first = false
		p.out = strconv.AppendInt(p.out, int64(n), 10)
	}
	was := p.now
	if was.flags&^l.flags != 0 { // a flag goes: begin from nothing
		number(0)
		was = look{}
	}
	for k := 1; k <= 9; k++ {
		if l.flags&^was.flags&(1<<k) != 0 {
			number(k)
		}
	}
	if l.text != was.text {
		l.text.numbers(number, 30)
	}
	if l.ground != was.ground {
		l.ground.numbers(number, 40)
	}
	if first { // nothing differs that is written
		p.out = p.out[:start]
	} else {
		p.out = append(p.out, 'm')
	}
	p.now = l
}

// numbers writes a colour on text (30) or ground (40).
func (c colour) numbers(number func(int), on int) {
	v := int(c &^ kinds)
	switch c & kinds {
	case ofSixteen:
		if v < 8 {
			number(on + v)
		} else {
			number(on + 60 + v - 8)
		}
	case of256:
		number(on + 8)
		number(5)
		number(v)
	case ofAll:
		if n, ok := draw.Indexed(uint8(v>>16), uint8(v>>8), uint8(v)); ok { // the same colour in half the bytes
			(of256 | colour(n)).numbers(number, on)
			return
		}
		number(on + 8)
		number(2)
		number(v >> 16)
		number(v >> 8 & 255)
		number(v & 255)
	default:
		number(on + 9)
	}
}

// bridge is how many equal cells between two runs are written again, since to pass over them
// costs as much.
const bridge = 3

// line writes the runs of a line that differ from what stands there. Whatever lies beyond a line
// is blank.
func (p *pen) line(row int, was, is []cell) {
	n := max(len(was), len(is))
	at := func(c []cell, k int) cell {
		if k < len(c) {
			return c[k]
		}
		return blank
	}
	end := n // from here on the line is blank, and erasing is shorter than writing
	for end > 0 && at(is, end-1) == blank {
		end--
	}
	last := n
	for last > 0 && at(was, last-1) == at(is, last-1) {
		last--
	}
	placed := -1
	for k := 0; k < last; {
		if at(was, k) == at(is, k) {
			k++
			continue
		}
		if placed < 0 || k-placed > bridge {
			p.out = append(p.out, "\x1b["...)
			if placed < 0 {
				p.out = strconv.AppendInt(p.out, int64(row+1), 10)
				p.out = append(p.out, ';')
				p.out = strconv.AppendInt(p.out, int64(k+1), 10)
				p.out = append(p.out, 'H')
			} else {
				p.out = strconv.AppendInt(p.out, int64(k+1), 10)
				p.out = append(p.out, 'G')
			}
		} else {
			for j := placed; j < k; j++ {
				p.put(at(is, j))
			}
		}
		if k >= end && last-k > 3 {
			p.to(look{})
			p.out = append(p.out, erase...)
			return
		}
		p.put(at(is, k))
		k++
		placed = k
	}
}

func (p *pen) put(c cell) {
	l := c.look
	if c.char == ' ' && l.flags == 0 { // its text is not seen: no need to change it
		l.text, l.flags = p.now.text, p.now.flags
		if p.now.flags&seen != 0 {
			l.text, l.flags = 0, 0
		}
	}
	if other, ok := swapped(c); ok && p.changes(other.look) < p.changes(l) {
		c, l = other, other.look
	}
	p.to(l)
	p.out = utf8.AppendRune(p.out, c.char)
}

// The two halves of a cell.
const upperHalf, lowerHalf = '\u2580', '\u2584'

// swapped is the same picture with the other half of the cell as its text; ok is false where there
// is none.
func swapped(c cell) (other cell, ok bool) {
	if c.look.text == 0 || c.look.ground == 0 || c.look.flags != 0 || c.char != upperHalf && c.char != lowerHalf {
		return c, false
	}
	other = cell{char: upperHalf + lowerHalf - c.char, look: look{text: c.look.ground, ground: c.look.text}}
	return other, true
}

// changes is how many colours a look changes.
func (p *pen) changes(l look) int {
	n := 0
	if l.text != p.now.text {
		n++
	}
	if l.ground != p.now.ground {
		n++
	}
	return n
}
