package main

import (
	"cmp"
	_ "embed"
	"errors"
	"fmt"
	"io"
	"os"
	"os/signal"
	"strings"
	"syscall"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/mattn/go-isatty"
	"github.com/muesli/termenv"

	"contralay/calc/sheet"
	"contralay/cmd/contralay/keep"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/ui/bench"
	"contralay/ui/bench/desk"
	"contralay/ui/draw"
	"contralay/ui/screen"
)

// demonstration is an invented harness; nothing of it is written until it is
// given a name.
//
//go:embed demo.toml
var demonstration []byte

// benchOn opens the bench on a file, or on the demonstration where name is "".
func benchOn(name string, o options, w world) (int, error) {
	if name == "-" {
		return usage, misuse{"the bench needs a file that it can save to. For standard input use check - or figures -"}
	}
	if !isTerminal(w.in) || !isTerminal(w.out) {
		return usage, misuse{"the bench needs a terminal. Without one, use contralay check FILE, contralay figures FILE or contralay plan"}
	}
	if w.env("TERM") == "dumb" {
		return usage, misuse{"a terminal with TERM=dumb cannot show the bench. Use contralay check FILE, contralay figures FILE or " +
			"contralay plan"}
	}
	w.takes(gcPercent, benchMemory)
	first := keep.FirstStart(w.env)
	type shelf struct {
		cat *catalogue.Catalogue
		err error
	}
	read := make(chan shelf, 1) // the catalogue is read beside the harness
	go func() {
		cat, err := entries(o, w)
		read <- shelf{cat, err}
	}()
	k := keep.Open(name, w.env, w.now) // first: what is written to the file from here on is somebody else's
	defer k.Close()
	d, err := openDoc(name)
	if err != nil {
		return usage, err
	}
	sh := <-read
	if sh.err != nil {
		return usage, sh.err
	}
	if err := k.Share(d); err != nil {
		return usage, err
	}
	left, unread, notice := keep.Unsaved(name, k.WithLog(d), k.Mark(), w.env)
	cfg := desk.Config{
		Doc: d, Path: name, Cat: sh.cat, ASCII: o.ascii || !utf8Locale(w.env) || w.env("TERM") == "linux",
		Palette:   draw.NewPalette(colours(o, w.env), !o.light && !lightBackground(w.env)),
		Welcome:   first || name == "",
		Run:       o.run,
		Serial:    o.serial,
		Notice:    cmp.Or(notice, "This is a planning aid, not an approval. H shows the cautions and the keys."),
		Save:      k.Save,
		List:      listFolder,
		Exists:    func(p string) bool { _, err := os.Lstat(p); return err == nil },
		Changed:   k.Changed,
		Keep:      k.Keep,
		Look:      k.Look,
		Brought:   k.Brought,
		Barred:    k.Barred,
		ListBytes: func(path string) ([]byte, error) { return listBytes(path, w) },
		WriteNew:  writeNew,
		Learn: func(c catalogue.Correction) (*catalogue.Catalogue, error) {
			name, err := correctionsFile(options{}, w)
			if err == nil {
				err = appendCorrections(name, c.Text())
			}
			if err != nil {
				return nil, err
			}
			return entries(o, w)
		},
		Print: func(path string, s *sheet.Sheet, unsaved bool) (string, error) {
			return printBeside(path, s, unsaved, o, w)
		},
		Left:   left,
		Unread: unread,
		Bounce: o.bounce, RunBounce: o.runBounce,
		Folder: here(),
		Now:    w.now,
		Search: w.search,
	}
	var root tea.Model = bench.Program{Model: bench.New(cfg)}
	if w.wrap != nil {
		root = w.wrap(root)
	}
	scr := screen.New(w.out, 80)
	defer scr.Leave() // before what is said on the way out
	p := tea.NewProgram(onScreen{root, scr, &tidier{}, &pace{}}, tea.WithFPS(1), tea.WithoutSignalHandler(), tea.WithInput(w.in),
		tea.WithOutput(mute{w.out}))
	// A closed window or a dropped line would kill the program outright. The others the
	// terminal library would hear too, but only from some time after its first frame.
	hup := make(chan os.Signal, 1)
	signal.Notify(hup, syscall.SIGHUP, syscall.SIGTERM, os.Interrupt)
	defer signal.Stop(hup)
	go func() {
		if _, ok := <-hup; ok {
			p.Kill()
		}
	}()
	end, err := p.Run()
	scr.Leave()
	if o, is := end.(onScreen); is {
		end = o.Model
	}
	if m, is := end.(bench.Program); is && err == nil && m.Left() {
		k.Discard() // left by choice: what was to be saved is saved
		return ok, nil
	}
	says, werr := k.Rescue()
	if werr != nil {
		return usage, fmt.Errorf("the bench was stopped, and your unsaved work could not be written: %w", werr)
	}
	if says != "" {
		tell(w, "the bench was stopped. "+says)
	}
	if err != nil && !errors.Is(err, tea.ErrProgramKilled) && !errors.Is(err, tea.ErrInterrupted) {
		return usage, err
	}
	return ok, nil
}

// here is the folder the program runs in; "" where it is gone.
func here() string {
	d, err := os.Getwd()
	if err != nil {
		return ""
	}
	return d
}

func openDoc(name string) (file.Document, error) {
	if name == "" {
		return file.Parse(demonstration, "the demonstration")
	}
	return file.Load(name)
}

func isTerminal(f *os.File) bool {
	return f != nil && (isatty.IsTerminal(f.Fd()) || isatty.IsCygwinTerminal(f.Fd()))
}

// colours is how many colours the terminal shows, as far as its environment says; it is
// not asked. Where colour is wanted and nothing is known, 16 are shown: a terminal that
// shows none at all is rare, and its name says so.
func colours(o options, env func(string) string) draw.Profile {
	if o.colour == "never" || o.colour != "always" && env("NO_COLOR") != "" {
		return draw.NoColour
	}
	known := termenv.NewOutput(io.Discard, termenv.WithTTY(true), termenv.WithEnvironment(only(env))).ColorProfile()
	switch known {
	case termenv.TrueColor:
		return draw.TrueColour
	case termenv.ANSI256:
		return draw.Colours256
	}
	if term := env("TERM"); o.colour != "always" && (strings.HasPrefix(term, "vt1") || strings.HasPrefix(term, "vt2") ||
		strings.HasSuffix(term, "-mono") || strings.HasSuffix(term, "-m")) {
		return draw.NoColour
	}
	return draw.Colours16
}

// only is an environment that the terminal library reads from an argument.
type only func(string) string

// Getenv implements termenv.Environ.
func (o only) Getenv(name string) string { return o(name) }

// Environ implements termenv.Environ. Nothing that is asked here goes through it.
func (o only) Environ() []string { return nil }

// lightBackground reads the background from COLORFGBG, where the terminal sets it.
func lightBackground(env func(string) string) bool {
	v := env("COLORFGBG")
	if i := strings.LastIndexByte(v, ';'); i >= 0 {
		return v[i+1:] == "7" || v[i+1:] == "15"
	}
	return false
}

// utf8Locale reads the locale the way POSIX orders it.
func utf8Locale(env func(string) string) bool {
	for _, k := range []string{"LC_ALL", "LC_CTYPE", "LANG"} {
		if v := env(k); v != "" {
			v = strings.ToLower(v)
			return strings.Contains(v, "utf-8") || strings.Contains(v, "utf8")
		}
	}
	return false
}
