package main

import (
	_ "embed"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"os/signal"
	"strings"
	"sync"
	"sync/atomic"
	"syscall"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/mattn/go-isatty"

	"contralay/model/file"
	"contralay/ui/bench"
	"contralay/ui/draw"
)

// demonstration is an invented harness; nothing of it is written until it is
// given a name.
//
//go:embed demo.toml
var demonstration []byte

// benchOn opens the bench on a file, or on the demonstration where name is "".
func benchOn(name string, o options, w world) (int, error) {
	if name == "-" {
		return usage, misuse{"the bench needs a file it can save to; use check - or figures - for standard input"}
	}
	if !isTerminal(w.in) || !isTerminal(w.out) {
		return usage, misuse{"the bench needs a terminal; without one use: contralay check FILE, contralay figures FILE, contralay plan"}
	}
	if w.env("TERM") == "dumb" {
		return usage, misuse{"TERM=dumb cannot show the bench; use: contralay check FILE, contralay figures FILE, contralay plan"}
	}
	d, err := openDoc(name)
	if err != nil {
		return usage, err
	}
	cat, err := entries(o, w)
	if err != nil {
		return usage, err
	}
	var last atomic.Pointer[kept]
	cfg := bench.Config{
		Doc: d, Path: name, Cat: cat, ASCII: o.ascii || !utf8Locale(w.env) || w.env("TERM") == "linux",
		Palette: draw.Palette{Colour: colourWanted(o, w), Dark: !o.light && !lightBackground(w.env)},
		Welcome: "A planning aid, not an approval; H shows keys and cautions.",
		Save:    file.Save,
		Exists:  func(p string) bool { _, err := os.Lstat(p); return err == nil },
		Keep:    func(d file.Document, dirty bool) { last.Store(&kept{d, dirty}) },
	}
	p := tea.NewProgram(bench.New(cfg), tea.WithAltScreen(), tea.WithFPS(120), tea.WithInput(w.in), tea.WithOutput(w.out))
	// A closed window or a dropped line kills the program outright: the work goes
	// to a file beside the harness first.
	// However it is cut off, the work is written once.
	rescue := sync.OnceValues(func() (string, error) { return recoverWork(name, last.Load()) })
	hup := make(chan os.Signal, 1)
	signal.Notify(hup, syscall.SIGHUP)
	defer signal.Stop(hup)
	go func() {
		if _, ok := <-hup; ok {
			_, _ = rescue()
			p.Kill()
		}
	}()
	end, err := p.Run()
	if m, is := end.(*bench.Model); is && err == nil && m.Left() {
		return ok, nil // left by choice: what was to be saved is saved
	}
	saved, werr := rescue()
	switch {
	case werr != nil:
		return usage, fmt.Errorf("the bench was stopped and the unsaved work could not be written: %w", werr)
	case saved != "":
		fmt.Fprintln(w.err, "contralay: the bench was stopped; the unsaved work is in "+saved)
	}
	if err != nil && !errors.Is(err, tea.ErrProgramKilled) && !errors.Is(err, tea.ErrInterrupted) {
		return usage, err
	}
	return ok, nil
}

// kept is the harness as it was last.
type kept struct {
	doc   file.Document
	dirty bool
}

func openDoc(name string) (file.Document, error) {
	if name == "" {
		return file.Parse(demonstration, "the demonstration")
	}
	return file.Load(name)
}

// recoverWork writes unsaved work beside the harness, under a name that is free:
// what an earlier stop left there may still be wanted. "" where there is none.
func recoverWork(name string, k *kept) (string, error) {
	if k == nil || !k.dirty {
		return "", nil
	}
	to := strings.TrimSuffix(name, ".toml")
	if to == "" {
		to = "contralay"
	}
	for n := 1; ; n++ {
		free := to + ".recovered.toml"
		if n > 1 {
			free = fmt.Sprintf("%s.recovered-%d.toml", to, n)
		}
		if _, err := os.Lstat(free); errors.Is(err, fs.ErrNotExist) {
			return free, file.Save(free, k.doc)
		} else if err != nil {
			return "", err
		}
	}
}

func isTerminal(f *os.File) bool {
	return f != nil && (isatty.IsTerminal(f.Fd()) || isatty.IsCygwinTerminal(f.Fd()))
}

func colourWanted(o options, w world) bool {
	switch o.colour {
	case "always":
		return true
	case "never":
		return false
	}
	return w.env("NO_COLOR") == ""
}

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
