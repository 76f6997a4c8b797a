// Command picture draws one screen of the bench as an SVG, as a terminal would show it:
// the picture of the README, and any other screen for whoever wants to look at one.
//
//	go run ./cmd/picture -keys right >testdata/bench.svg
//	go run ./cmd/picture -size 40x12 -ascii -keys right,enter FILE >screen.svg
package main

import (
	"flag"
	"fmt"
	"html"
	"image/color"
	"io"
	"os"
	"strings"

	tea "github.com/charmbracelet/bubbletea"
	uv "github.com/charmbracelet/ultraviolet"
	"github.com/charmbracelet/x/vt"

	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/ui/bench"
	"contralay/ui/bench/desk"
	"contralay/ui/draw"
)

// want is what is to be drawn, as the flags say it.
type want struct {
	path          string
	width, height int
	keys          []string
	palette       draw.Palette
	ascii         bool
}

func main() {
	w := want{}
	size := flag.String("size", "120x40", "columns and lines of the screen")
	keys := flag.String("keys", "", "keys that are pressed first, with commas between: right,down,enter,5")
	colour := flag.Bool("colour", true, "colours")
	depth := flag.Int("depth", 24, "how many colours: 24 bits, 256 or 16")
	light := flag.Bool("light", false, "a light background")
	flag.BoolVar(&w.ascii, "ascii", false, "plain characters")
	flag.Parse()
	w.path = "testdata/demo.toml"
	if flag.NArg() > 0 {
		w.path = flag.Arg(0)
	}
	profile := draw.TrueColour
	switch {
	case !*colour:
		profile = draw.NoColour
	case *depth == 256:
		profile = draw.Colours256
	case *depth == 16:
		profile = draw.Colours16
	}
	w.palette = draw.NewPalette(profile, !*light)
	if *keys != "" {
		w.keys = strings.Split(*keys, ",")
	}
	if n, err := fmt.Sscanf(*size, "%dx%d", &w.width, &w.height); n != 2 || err != nil || w.width < 1 || w.height < 1 {
		fmt.Fprintf(os.Stderr, "picture: %q is no size; write columns x lines, such as 80x24\n", *size)
		os.Exit(2)
	}
	if err := draws(os.Stdout, w); err != nil {
		fmt.Fprintln(os.Stderr, "picture:", err)
		os.Exit(2)
	}
}

// draws opens a bench, presses the keys and writes the screen.
func draws(out io.Writer, w want) error {
	d, err := file.Load(w.path)
	if err != nil {
		return err
	}
	cat, err := catalogue.Default()
	if err != nil {
		return err
	}
	var m tea.Model = bench.Program{Model: bench.New(desk.Config{Doc: d, Path: w.path, Cat: cat, Palette: w.palette, ASCII: w.ascii})}
	run := func(cmd tea.Cmd) { // what the bench works out beside the screen is done at once
		for cmd != nil {
			msg := cmd()
			if msg == nil {
				return
			}
			m, cmd = m.Update(msg)
		}
	}
	run(m.Init())
	step := func(msg tea.Msg) {
		var cmd tea.Cmd
		m, cmd = m.Update(msg)
		run(cmd)
	}
	step(tea.WindowSizeMsg{Width: w.width, Height: w.height})
	for _, k := range w.keys {
		step(key(k))
	}
	svg(out, m.View(), w)
	return nil
}

// keyTypes are the keys that are no characters, by name.
var keyTypes = map[string]tea.KeyType{"up": tea.KeyUp, "down": tea.KeyDown, "left": tea.KeyLeft, "right": tea.KeyRight,
	"enter": tea.KeyEnter, "esc": tea.KeyEsc, "backspace": tea.KeyBackspace, "end": tea.KeyEnd, "home": tea.KeyHome,
	"pgdown": tea.KeyPgDown, "pgup": tea.KeyPgUp}

func key(name string) tea.KeyMsg {
	if t, ok := keyTypes[name]; ok {
		return tea.KeyMsg{Type: t}
	}
	return tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(name)}
}

// A cell of the picture in user units: half as wide as it is high, as in most fonts.
const (
	cellWide = 8
	cellHigh = 16
	baseline = 13
)

// svg writes a frame. Each run of cells of one look is one text, stretched to its cells, so
// that any monospaced font keeps the columns.
func svg(out io.Writer, frame string, w want) {
	term := vt.NewEmulator(w.width, w.height)
	defer term.Close()
	fmt.Fprint(term, strings.ReplaceAll(frame, "\n", "\r\n"))
	ink, ground := "#d8dbe0", "#16181d"
	if !w.palette.Dark {
		ink, ground = "#1c1e22", "#fbfaf7"
	}
	wide, high := w.width*cellWide+24, w.height*cellHigh+20
	fmt.Fprintf(out, `<svg xmlns="http://www.w3.org/2000/svg" width="%d" height="%d" viewBox="0 0 %d %d" role="img" `+
		`aria-label="a screen of the bench">`+"\n", wide, high, wide, high)
	fmt.Fprintf(out, `<rect width="100%%" height="100%%" rx="8" fill="%s"/>`+"\n"+`<g transform="translate(12 10)" `+
		`font-family="DejaVu Sans Mono, Menlo, Consolas, monospace" font-size="13">`+"\n", ground)
	for y := range w.height {
		for x := 0; x < w.width; {
			from, look := x, lookOf(term.CellAt(x, y), ink, ground)
			var text strings.Builder
			for x < w.width {
				c := term.CellAt(x, y)
				if lookOf(c, ink, ground) != look {
					break
				}
				step := 1
				if c != nil && c.Width > 1 {
					step = c.Width
				}
				if c == nil || c.Content == "" {
					text.WriteByte(' ')
				} else {
					text.WriteString(c.Content)
				}
				x += step
			}
			put(out, from, y, x-from, text.String(), look, ground)
		}
	}
	fmt.Fprintln(out, "</g>\n</svg>")
}

// look is what a cell looks like.
type look struct {
	ink, ground string
	bold, faint bool
}

func lookOf(c *uv.Cell, ink, ground string) look {
	l := look{ink: ink, ground: ground}
	if c == nil {
		return l
	}
	if c.Style.Fg != nil {
		l.ink = hex(c.Style.Fg)
	}
	if c.Style.Bg != nil {
		l.ground = hex(c.Style.Bg)
	}
	if c.Style.Attrs&uv.AttrReverse != 0 {
		l.ink, l.ground = l.ground, l.ink
	}
	l.bold, l.faint = c.Style.Attrs&uv.AttrBold != 0, c.Style.Attrs&uv.AttrFaint != 0
	return l
}

func hex(c color.Color) string {
	r, g, b, _ := c.RGBA()
	return fmt.Sprintf("#%02x%02x%02x", r>>8, g>>8, b>>8)
}

func put(out io.Writer, x, y, n int, text string, l look, ground string) {
	if l.ground != ground {
		fmt.Fprintf(out, `<rect x="%d" y="%d" width="%d" height="%d" fill="%s"/>`, x*cellWide, y*cellHigh, n*cellWide, cellHigh, l.ground)
	}
	trimmed := strings.TrimRight(text, " ")
	if trimmed == "" {
		return
	}
	more := ""
	if l.bold {
		more += ` font-weight="bold"`
	}
	if l.faint {
		more += ` opacity=".65"`
	}
	fmt.Fprintf(out, `<text x="%d" y="%d" fill="%s"%s textLength="%d">%s</text>`+"\n", x*cellWide, y*cellHigh+baseline, l.ink, more,
		n*cellWide,
		strings.ReplaceAll(html.EscapeString(text), " ", "\u00a0")) // plain spaces in a row would be drawn as one
}
