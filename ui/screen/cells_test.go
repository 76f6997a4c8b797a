package screen

import (
	"fmt"
	"image/color"
	"strings"
	"testing"
	"testing/synctest"
	"time"

	uv "github.com/charmbracelet/ultraviolet"
	"github.com/charmbracelet/x/vt"
	"pgregory.net/rapid"
)

// shownCell is what is seen of a cell: its two halves where it is a half block, else its character
// and its ground.
func shownCell(c *uv.Cell) string {
	if c == nil {
		return "blank"
	}
	rgb := func(c color.Color) string {
		if c == nil {
			return "own"
		}
		r, g, b, _ := c.RGBA()
		return fmt.Sprintf("%02x%02x%02x", r>>8, g>>8, b>>8)
	}
	text, ground := rgb(c.Style.Fg), rgb(c.Style.Bg)
	more := fmt.Sprint(c.Style.Attrs, c.Style.Underline)
	switch c.Content {
	case "▀":
		return text + "/" + ground + more
	case "▄":
		return ground + "/" + text + more
	case " ", "":
		if c.Style.Attrs&(uv.AttrReverse|uv.AttrStrikethrough) == 0 && fmt.Sprint(c.Style.Underline) == "0" {
			if ground == "own" {
				return "blank"
			}
			return ground + "/" + ground + "0 0"
		}
	}
	return c.Content + " " + text + " on " + ground + more
}

// Whatever coloured frames were shown one after the other, the terminal shows the last as if it
// had been written whole: each cell with its colours, and no other.
func TestRunsOfCellsStand(t *testing.T) {
	const w, h = 16, 4
	pieces := []string{"a", " ", "  ", "   ", "▀", "▄", "▀▀", "│", "é", "\x1b[0m", "\x1b[m", "\x1b[1m", "\x1b[22m", "\x1b[7m", "\x1b[27m",
		"\x1b[4m", "\x1b[31m", "\x1b[97;44m", "\x1b[39m", "\x1b[49m", "\x1b[38;5;73m", "\x1b[48;5;236m", "\x1b[38;2;1;2;3m",
		"\x1b[48;2;88;88;88;1m", "\x1b[0;38;2;200;100;0;48;2;9;8;7m", "線", "e\u0301", "\x1b[3;9m"}
	rapid.Check(t, func(r *rapid.T) {
		line := rapid.Custom(func(r *rapid.T) string {
			var b strings.Builder
			cells := 0
			for range rapid.IntRange(0, 14).Draw(r, "pieces") {
				p := rapid.SampledFrom(pieces).Draw(r, "piece")
				n := 0
				if !strings.HasPrefix(p, "\x1b") {
					n = len([]rune(p))
					if p == "線" {
						n = 2
					}
				}
				if cells += n; cells > w {
					break
				}
				b.WriteString(p)
			}
			return b.String() + "\x1b[0m"
		})
		var frames []string
		for range rapid.IntRange(1, 6).Draw(r, "frames") {
			frames = append(frames, strings.Join(rapid.SliceOfN(line, h, h).Draw(r, "lines"), "\n"))
		}
		got := vt.NewEmulator(w, h)
		defer got.Close()
		synctest.Test(t, func(*testing.T) {
			s := New(got, w)
			for _, f := range frames {
				s.Show(f)
				time.Sleep(2 * Apart)
			}
		})
		want := vt.NewEmulator(w, h)
		defer want.Close()
		fmt.Fprint(want, strings.ReplaceAll(frames[len(frames)-1], "\n", "\r\n"))
		for y := range h {
			for x := range w {
				if a, b := shownCell(got.CellAt(x, y)), shownCell(want.CellAt(x, y)); a != b {
					r.Fatalf("cell %d of line %d shows %q, want %q, of %q", x, y, a, b, frames)
				}
			}
		}
	})
}

// Of a line that changes in one cell, that cell is written; of a picture, its runs.
func TestOnlyWhatChangedIsWritten(t *testing.T) {
	for _, c := range []struct{ was, is, want string }{
		{"abcdefghij", "abcdXfghij", "\x1b[1;5HX"},
		{"abcdefghij", "XbcYefghij", "\x1b[1;1HXbcY"},
		{"abcdefghij", "Xbcdefg  Y", "\x1b[1;1HX\x1b[8G  Y"},
		{"abcdefghij", "abc", "\x1b[1;4H\x1b[K"},
		{"abc", "abc\x1b[31m   \x1b[0m", ""},
		{"\x1b[31mabc\x1b[0m", "\x1b[31mabX\x1b[0m", "\x1b[1;3H\x1b[31mX\x1b[m"},
		{"", "\x1b[38;2;255;0;0;48;2;1;2;3m▀\x1b[0;38;2;1;2;3;48;2;255;0;0m▀\x1b[0m", "\x1b[1;1H\x1b[38;5;196;48;2;1;2;3m▀▄\x1b[m"},
		{"\x1b[38;2;88;88;88mx\x1b[0m", "\x1b[38;2;88;88;89mx\x1b[0m", "\x1b[1;1H\x1b[38;2;88;88;89mx\x1b[m"},
		{"線abc", "線abd", "\x1b[1;1H線abd\x1b[K"},
	} {
		var out strings.Builder
		synctest.Test(t, func(*testing.T) {
			s := New(&out, 10)
			s.Show(c.was)
			time.Sleep(2 * Apart)
			out.Reset()
			s.Show(c.is)
			time.Sleep(2 * Apart)
		})
		if out.String() != c.want {
			t.Errorf("%q to %q writes %q, want %q", c.was, c.is, out.String(), c.want)
		}
	}
}
