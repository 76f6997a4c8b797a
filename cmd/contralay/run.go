package main

import (
	"contralay/ui/guide/manual"
	"errors"
	"fmt"
	"os"
	"strings"
	"time"

	tea "github.com/charmbracelet/bubbletea"
)

// world is everything a run touches outside its arguments.
type world struct {
	in, out, err *os.File
	env          func(string) string
	now          func() time.Time
	search       time.Duration                 // how long a bench searches by itself
	collect      func(percent int, most int64) // sets when memory is collected; nil in tests, whose process is not the program's
	large        func(bytes int)               // gives the heap room in large pages; nil in tests, as collect is
	wrap         func(tea.Model) tea.Model     // tests put themselves round the bench; else nil
}

// takes sets how far the heap may grow between two collections, in percent, and how many bytes are taken before
// they come more often.
func (w world) takes(percent int, most int64) {
	if w.collect != nil {
		w.collect(percent, most)
	}
}

// Exit codes.
const (
	ok      = 0 // it did its work
	stopped = 1 // check found a stop
	usage   = 2 // wrong use, or a file that cannot be read
)

// misuse is wrong use: one line on stderr, exit 2.
type misuse struct{ says string }

func (m misuse) Error() string { return m.says }

func run(args []string, w world) int {
	code, err := dispatch(args, w)
	if err == nil {
		return code
	}
	if errors.Is(err, errPipe) {
		return ok
	}
	complain(w, err)
	return usage
}

var errPipe = errors.New("reader went away")

func dispatch(args []string, w world) (int, error) {
	o, rest, err := parse(args)
	if err != nil {
		return usage, err
	}
	if o.help {
		return ok, print(w.out, manual.Usage())
	}
	if len(rest) == 0 {
		return benchOn("", o, w)
	}
	switch cmd, more := rest[0], rest[1:]; cmd {
	case "version":
		return version(more, w)
	case "man":
		return man(more, w)
	case "help":
		return help(more, w)
	case "completion":
		shell, err := one(cmd, more)
		if err != nil {
			return usage, misuse{"completion needs the name of the shell: bash, zsh or fish"}
		}
		return completion(shell, w)
	case "new":
		f, err := one(cmd, more)
		if err != nil {
			return usage, err
		}
		return newFile(f)
	case "check":
		f, err := one(cmd, more)
		if err != nil {
			return usage, err
		}
		return check(f, o, w)
	case "figures":
		f, err := one(cmd, more)
		if err != nil {
			return usage, err
		}
		return figuresOf(f, o, w)
	case "plan":
		return planOf(more, o, w)
	case "inserts":
		return insertsOf(more, o, w)
	case "import":
		return importLists(more, o, w)
	case "compare":
		return compareTwo(more, o, w)
	case "measured":
		return measuredOf(more, o, w)
	case "run":
		f, err := one(cmd, more)
		if err != nil {
			return usage, err
		}
		o.run = true
		return benchOn(f, o, w)
	case "sheet":
		f, err := one(cmd, more)
		if err != nil {
			return usage, err
		}
		return sheetFor(f, o, w)
	case "section":
		return sectionOf(more, o, w)
	case "drawing":
		return drawingOf(more, o, w)
	case "learn":
		return usage, misuse{"learn is now called measured: contralay measured FILE... compares what was measured with what was predicted"}
	default:
		if len(more) > 0 {
			return usage, misuse{fmt.Sprintf("%q is no command. The commands are %s (contralay --help)", cmd,
				strings.Join(manual.Names(), ", "))}
		}
		return benchOn(cmd, o, w)
	}
}

func one(cmd string, args []string) (string, error) {
	if len(args) != 1 {
		return "", misuse{fmt.Sprintf("%s needs one FILE (contralay --help)", cmd)}
	}
	return args[0], nil
}
