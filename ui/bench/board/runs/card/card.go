package card

import (
	"fmt"
	"strings"

	"contralay/model"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
)

// Card is what stands over the rows of a step.
type Card struct {
	Title  string   // what is done where, and which of how many it is
	Number string   // in letters: the wire, else a word or two
	Colour string   // code of its insulation; "" has none
	Second string   // in letters too where there is room, else in capitals
	Lines  []string // what must be read
	Bar    []Mark   // the layer or the batch
	More   []string // what is left out where there is no room
	Low    []string // on a low screen: the lines over and under the colour, beside the number
	Under  string   // and the line below that
}

// Mark is one piece on the bar.
type Mark struct{ Done, Hand, Tracer bool }

// The height from which a card has room for more than the number and three lines, and the gap
// between what stands side by side.
const (
	lowUpTo = 6
	gap     = 2
)

// Draw draws a card in at most h lines of at most w cells.
func (c Card) Draw(t *kit.Theme, w, h int) []string {
	if h <= 0 || w <= 0 {
		return nil
	}
	if h <= lowUpTo {
		return c.low(t, w, h)
	}
	var out []string
	for _, line := range kit.Wrap(t.Text(c.Title), w) {
		out = append(out, t.Paint(kit.Strong, line))
	}
	must := kit.WrapAll(plain(t, c.Lines), w)
	rest := len(must) + min(len(c.Bar), 1)
	out = append(out, c.letters(t, w, h-len(out)-rest)...)
	out = append(out, must...)
	if len(c.Bar) > 0 {
		out = append(out, Bar(t, c.Bar, w))
	}
	for _, text := range c.More {
		if lines := kit.Wrap(t.Text(text), w); len(out)+len(lines) <= h {
			for _, line := range lines {
				out = append(out, t.Paint(kit.Quiet, line))
			}
		}
	}
	return out[:min(len(out), h)]
}

func plain(t *kit.Theme, lines []string) []string {
	out := make([]string, len(lines))
	for k, line := range lines {
		out[k] = t.Text(line)
	}
	return out
}

// letters are the number and its colour in letters, in up to so many lines.
func (c Card) letters(t *kit.Theme, w, room int) []string {
	if c.Number == "" {
		return nil
	}
	roomOf := room // of the number: letters of five rows only where that leaves three for the rest
	if c.Second != "" {
		roomOf -= words.TallH
	}
	number := drawn(c.Number, w, max(roomOf, min(room, words.TallH)), t.ASCII)
	if number == nil {
		out := []string{t.Paint(kit.Strong, draw.Cut(strings.ToUpper(t.Text(c.Number)), w, t.ASCII))}
		return append(out, c.chipAndWords(t, w)...)
	}
	var second []string
	if c.Second != "" {
		if second = words.Tall(c.Second, w, t.ASCII); second == nil || len(number)+len(second) > room {
			second = []string{draw.Cut(strings.ToUpper(t.Text(c.Second)), w, t.ASCII)}
		}
	}
	spare := room - len(number) - len(second)
	var out []string
	if spare > 0 {
		out, spare = append(out, ""), spare-1
	}
	out = append(out, c.beside(t, w, number)...)
	if spare > 0 && len(second) > 1 {
		out = append(out, "")
	}
	for _, line := range second {
		out = append(out, t.Paint(kit.Strong, line))
	}
	return out
}

// drawn is a text in letters: of five rows where only plain characters are to be had and there is
// room, else of three; nil where it has no room at all, or cannot be drawn.
func drawn(text string, w, room int, ascii bool) []string {
	if room < words.TallH {
		return nil
	}
	if three := words.Tall(text, w, ascii); !ascii || three == nil || room < 7 {
		return three
	} else if five := words.Letters(text, w, true); five != nil {
		return five
	} else {
		return three
	}
}

// beside puts the swatch and the words of the colour beside the number: in letters where they have
// room, else as they are.
func (c Card) beside(t *kit.Theme, w int, number []string) []string {
	wide := 0
	for _, line := range number {
		wide = max(wide, draw.Width(line))
	}
	says := model.ColourWords(c.Colour)
	chip, chipW := Swatch(t, c.Colour, 2)
	at := wide + gap
	if chipW > 0 {
		at += chipW + gap
	}
	var tall []string
	if len(number) == words.TallH {
		tall = words.Tall(says, w-at, t.ASCII)
	} else {
		tall = words.Letters(says, w-at, t.ASCII)
	}
	out := make([]string, len(number))
	for k := range number {
		line := t.Paint(kit.Strong, draw.Pad(number[k], wide))
		if c.Colour != "" && at < w {
			line += strings.Repeat(" ", gap)
			if chipW > 0 {
				line += chip + strings.Repeat(" ", gap)
			}
			switch {
			case tall != nil:
				line += t.Paint(kit.Strong, tall[k])
			case k == len(number)/2:
				line += t.Paint(kit.Strong, draw.Cut(strings.ToUpper(t.Text(says)), max(0, w-at), t.ASCII))
			}
		}
		out[k] = line
	}
	return out
}

// chipAndWords is the colour in one line; none where there is no colour.
func (c Card) chipAndWords(t *kit.Theme, w int) []string {
	if c.Colour == "" {
		return nil
	}
	chip, wide := Swatch(t, c.Colour, 1)
	switch {
	case wide >= w:
		chip, wide = "", 0
	case wide > 0:
		chip, wide = chip+" ", wide+1
	}
	return []string{chip + t.Paint(kit.Strong, draw.Cut(t.Text(model.ColourWords(c.Colour)), max(0, w-wide), t.ASCII))}
}

// low is a card on a low screen: the number in letters, beside it where one is and the colour, then
// one line.
func (c Card) low(t *kit.Theme, w, h int) []string {
	beside := append([]string(nil), c.Low...)
	for len(beside) < 2 {
		beside = append(beside, "")
	}
	number := words.Tall(c.Number, w, t.ASCII)
	if number == nil || h < words.TallH {
		out := []string{t.Paint(kit.Strong, draw.Cut(t.Text(c.Title), w, t.ASCII))}
		if c.Number != "" {
			out = append(out, t.Paint(kit.Strong, draw.Cut(strings.ToUpper(t.Text(c.Number)), w, t.ASCII)))
		}
		out = append(out, c.chipAndWords(t, w)...)
		for _, line := range append(plain(t, c.Lines), t.Text(c.Under)) {
			if line != "" {
				out = append(out, draw.Cut(line, w, t.ASCII))
			}
		}
		return out[:min(len(out), h)]
	}
	wide := 0
	for _, line := range number {
		wide = max(wide, draw.Width(line))
	}
	room := max(0, w-wide-gap)
	right := []string{t.Paint(kit.Strong, draw.Cut(t.Text(beside[0]), room, t.ASCII)), "",
		draw.Cut(t.Text(beside[1]), room, t.ASCII)}
	if chip := c.chipAndWords(t, room); chip != nil {
		right[1] = chip[0]
	}
	var out []string
	for k := range number {
		line := t.Paint(kit.Strong, draw.Pad(number[k], wide))
		if room > 0 {
			line += strings.Repeat(" ", gap) + right[k]
		}
		out = append(out, line)
	}
	if c.Under != "" {
		out = append(out, draw.Cut(t.Text(c.Under), w, t.ASCII))
	}
	return out[:min(len(out), h)]
}

// Swatch is the colour of an insulation: its base with its stripes, each so many cells wide, and how
// many cells it takes. None where no colour is shown, or the code is none of digits.
func Swatch(t *kit.Theme, code string, each int) (string, int) {
	if !t.Palette.Colour || code == "" {
		return "", 0
	}
	bands := []byte(code[:1])
	for k := 1; k < len(code); k++ {
		bands = append(bands, code[k], code[0])
	}
	out := ""
	for _, digit := range bands {
		ground, ok := draw.Insulation(digit, t.Palette.Depth())
		if !ok {
			return "", 0
		}
		out += t.Palette.Paint(draw.Exact(nil, &ground, false), strings.Repeat(" ", each))
	}
	return out, len(bands) * each
}

// Bar is where one is among the pieces: done, in hand, to come; a star is the tracer. One that has no
// room for all shows those round the one in hand.
func Bar(t *kit.Theme, all []Mark, w int) string {
	done, open := "●", "·"
	if t.ASCII {
		done, open = "#", "."
	}
	sep := " "
	if 2*len(all) > w {
		sep = ""
	}
	at := 0
	for k, m := range all {
		if m.Hand {
			at = k
		}
	}
	first, last := 0, len(all)
	if len(all) > w {
		room := max(1, w-2) // a sign at both ends that there is more
		first = min(max(0, at-room/2), len(all)-room)
		last = first + room
	}
	var b strings.Builder
	if first > 0 {
		b.WriteString(t.Signs.Left)
	}
	for k := first; k < last; k++ {
		if k > first {
			b.WriteString(sep)
		}
		switch m := all[k]; {
		case m.Hand:
			b.WriteString(t.Paint(kit.Hand, "@"))
		case m.Tracer:
			b.WriteString("*")
		case m.Done:
			b.WriteString(done)
		default:
			b.WriteString(open)
		}
	}
	if last < len(all) {
		b.WriteString(t.Signs.Right)
	}
	return b.String()
}

// Paged is page k of a card that is to be read before it is done, and how many pages it has for so
// many lines of so many cells. One that has room is one page as it stands.
func (c Card) Paged(t *kit.Theme, w, h, k int) (Card, int) {
	if c.Under != "" || h < 2 { // a piece has its line for a low screen
		return c, 1
	}
	lines := c.Lines
	room := h - len(kit.Wrap(t.Text(c.Title), w)) - words.TallH - 2
	if low := h <= lowUpTo; low && c.Colour == "" {
		var all []string
		for _, text := range []string{c.Number, c.Second} {
			if text != "" {
				all = append(all, strings.ToUpper(text))
			}
		}
		lines, room = append(all, append(lines, c.More...)...), h-1
		c.Number, c.Second, c.More, c.Under = "", "", nil, ""
	}
	lines = kit.WrapAll(plain(t, lines), w)
	room = max(room, 1)
	pages := max(1, (len(lines)+room-1)/room)
	k = min(max(k, 0), pages-1)
	c.Lines = lines[k*room : min(len(lines), (k+1)*room)]
	if pages > 1 {
		c.Title += fmt.Sprintf(", page %d of %d", k+1, pages)
		c.More = nil
	}
	return c, pages
}
