package card_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/ui/bench/board/runs/card"
	"contralay/ui/bench/kit"
	"contralay/ui/draw"
)

func themes() map[string]*kit.Theme {
	return map[string]*kit.Theme{"plain": kit.NewTheme(draw.Palette{}, true), "none": kit.NewTheme(draw.Palette{}, false),
		"colour": kit.NewTheme(draw.NewPalette(draw.TrueColour, true), false)}
}

// wire is a card of a wire to lay.
func wire() card.Card {
	return card.Card{Title: "T1 layer 2, LH, lay 120 mm: put on 240, 9 of 22", Number: "240", Colour: "07",
		Lines: []string{"goes to splice S4", "before: 212 green/red   after: 121 blue/brown"},
		Bar:   []card.Mark{{Done: true, Tracer: true}, {Hand: true}, {}},
		Low:   []string{"9 of 22  T1 layer 2", "LH, lay 120 mm"}, Under: "goes to splice S4"}
}

// Whatever the size and the terminal, a card keeps to its lines and cells, and moves no
// cursor.
func TestCardKeepsToItsRoom(t *testing.T) {
	cards := []card.Card{wire(),
		{Title: "hold point", Number: "hold", Second: "ring out bare", Lines: []string{strings.Repeat("word ", 60)}},
		{Title: strings.Repeat("title ", 30), Number: "w\u00e9 ird", Colour: "GNYE"}, {}}
	for name, theme := range themes() {
		for k, c := range cards {
			for w := 0; w < 100; w += 1 + w/12 {
				for h := range 20 {
					for _, c := range []card.Card{c, first(c.Paged(theme, w, h, 1))} {
						lines := c.Draw(theme, w, h)
						if len(lines) > h {
							t.Fatalf("%s, card %d: %d lines of %d", name, k, len(lines), h)
						}
						for _, l := range lines {
							if draw.Width(l) > w || draw.Safe(l) != l {
								t.Fatalf("%s, card %d, %d x %d: %d cells: %q", name, k, w, h, draw.Width(l), l)
							}
						}
					}
				}
			}
		}
	}
}

func first(c card.Card, _ int) card.Card { return c }

// The words are all there at 78 x 11 and at 39 x 4: number, colour, where it goes.
func TestCardSaysWhatMatters(t *testing.T) {
	for name, theme := range themes() {
		low := strings.Join(wire().Draw(theme, 39, 4), "\n")
		for _, want := range []string{"9 of 22", "black/violet", "LH, lay 120 mm", "goes to splice S4"} {
			if !strings.Contains(low, want) {
				t.Errorf("%s, low, no %q:\n%s", name, want, low)
			}
		}
		high := strings.Join(wire().Draw(theme, 78, 11), "\n")
		for _, want := range []string{"put on 240, 9 of 22", "goes to splice S4", "before: 212 green/red", "@"} {
			if !strings.Contains(high, want) {
				t.Errorf("%s, high, no %q:\n%s", name, want, high)
			}
		}
	}
}

// A text that has no room is read page by page, and no word of it is lost.
func TestPaged(t *testing.T) {
	theme := kit.NewTheme(draw.Palette{}, true)
	var all []string
	for n := range 120 {
		all = append(all, fmt.Sprintf("w%03d", n))
	}
	for _, size := range [][2]int{{78, 11}, {39, 4}, {30, 3}} {
		c := card.Card{Title: "make up", Number: "twist C1", Lines: []string{strings.Join(all, " ")}}
		_, pages := c.Paged(theme, size[0], size[1], 0)
		if pages < 2 {
			t.Fatalf("%v: one page", size)
		}
		text := ""
		for k := range pages {
			p, n := c.Paged(theme, size[0], size[1], k)
			text += strings.Join(p.Draw(theme, size[0], size[1]), " ") + " "
			if n != pages {
				t.Errorf("%d pages, then %d", pages, n)
			}
		}
		for _, word := range all {
			if !strings.Contains(text, word) {
				t.Errorf("%v: %s is on no page", size, word)
			}
		}
	}
}

// A bar shows the piece in hand however many there are.
func TestBarShowsTheHand(t *testing.T) {
	theme := kit.NewTheme(draw.Palette{}, true)
	for _, n := range []int{1, 2, 22, 60, 300} {
		for hand := range n {
			marks := make([]card.Mark, n)
			for k := range marks {
				marks[k] = card.Mark{Done: k < hand, Hand: k == hand}
			}
			bar := card.Bar(theme, marks, 40)
			if draw.Width(bar) > 40 && n > 20 || strings.Count(bar, "@") != 1 {
				t.Fatalf("%d of %d: %q", hand, n, bar)
			}
			if before, _, _ := strings.Cut(bar, "@"); n <= 22 && strings.Count(before, "#") != hand {
				t.Fatalf("%d of %d: %q", hand, n, bar)
			}
		}
	}
}

// The swatch is the base with its stripes in it, in colour alone.
func TestSwatch(t *testing.T) {
	for name, theme := range themes() {
		for code, bands := range map[string]int{"6": 1, "96": 3, "926": 5, "": 0, "GNYE": 0} {
			chip, wide := card.Swatch(theme, code, 2)
			if want := 2 * bands; theme.Palette.Colour && wide != want || !theme.Palette.Colour && wide != 0 || draw.Width(chip) != wide {
				t.Errorf("%s %q: %d cells, %q", name, code, wide, chip)
			}
		}
	}
}
