package file

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"
)

// Work is what a bench left behind unsaved.
type Work struct {
	Doc  Document
	When time.Time
	Base string // Sum of the harness's file when the work began
	Log  string // the run log that has what is built too; "" where none has
	path string // of the file it is in
	also string // of an older one, which it takes with it when it goes; ""
	lock string
}

// Unread is a file of unsaved work that cannot be read. It stays where it is until a person
// takes it away.
type Unread struct {
	Path string
	Says string // why it cannot be read, as the rest of a sentence that begins with "it"
}

// Left is the work that benches which are gone left behind on the harness's file,
// newest first, what cannot be read of it, and how many are at work on it now.
func Left(dir, harness string) (left []Work, unread []Unread, busy int) {
	of := canonical(harness)
	for n := 1; n <= mostSlots; n++ {
		path := slot(dir, of, n)
		if exists(path + locking) {
			l, got, err := lock(path + locking)
			if err == nil && !got {
				busy++
				continue
			}
			if err == nil {
				release(l)
			}
		}
		var found []Work
		for _, name := range []string{path + newest, path} {
			if !exists(name) {
				continue
			}
			w, says := readWork(name)
			if says != "" {
				unread = append(unread, Unread{name, says})
				continue
			}
			w.lock = path + locking
			found = append(found, w)
		}
		if len(found) == 2 { // one bench's, and the newest has what the other has
			found[0].also = found[1].path
		}
		if len(found) > 0 {
			left = append(left, found[0])
		}
	}
	slices.SortStableFunc(left, func(a, b Work) int { return b.When.Compare(a.When) })
	return left, unread, busy
}

// Discard takes left work away.
func (w Work) Discard() error {
	if w.also != "" {
		os.Remove(w.also)
	}
	os.Remove(w.lock)
	return syncAfter(os.Remove(w.path), w.path)
}

// Discard takes it away, unread.
func (u Unread) Discard() error { return syncAfter(os.Remove(u.Path), u.Path) }

// syncAfter brings to disk that a file went away: it must not come back with the power.
func syncAfter(err error, path string) error {
	if err == nil {
		_ = syncFolder(filepath.Dir(path))
	}
	return err
}

// mostWork is the size of a journal that is still read: a harness and its head.
const mostWork = maxSize + 1<<16

// readWork reads a journal; says is why it cannot be read, "" where it can.
func readWork(path string) (w Work, says string) {
	text, err := Bytes(path, "the unsaved work", mostWork)
	if err != nil {
		return Work{}, "cannot be opened: " + err.Error()
	}
	first, _, _ := strings.Cut(string(text), "\n")
	format, ours := strings.CutPrefix(first, firstWords)
	number, err := strconv.Atoi(format)
	switch {
	case len(text) == 0:
		return Work{}, "is empty"
	case ours && err == nil && format != version && number > 1 && strings.Contains(string(text), "\n"):
		return Work{}, fmt.Sprintf("is of format %d, from a newer contralay: open the harness with that one", number)
	case !ours && !strings.HasPrefix(firstLine, first):
		return Work{}, "is no unsaved work of contralay"
	}
	w, err = parseWork(string(text), path)
	if err != nil {
		return Work{}, err.Error()
	}
	return w, ""
}

var errTorn = errors.New("is torn: part of it is missing")

// parseWork reads the text of a journal.
func parseWork(text, path string) (Work, error) {
	head, body, ok := strings.Cut(text, "\n\n")
	lines := strings.Split(head, "\n")
	if !ok || lines[0] != firstLine {
		return Work{}, errTorn
	}
	w := Work{path: path}
	sum := ""
	for _, l := range lines[1:] {
		switch name, value, _ := strings.Cut(l, " "); name {
		case "base":
			w.Base = value
		case "when":
			var err error
			if w.When, err = time.Parse(time.RFC3339, value); err != nil {
				return Work{}, errTorn
			}
		case "sum":
			sum = value
		case "log":
			w.Log = value
		}
	}
	if SumOf([]byte(body)) != sum {
		return Work{}, errTorn
	}
	var err error
	if w.Doc, err = Parse([]byte(body), path); err != nil {
		return Work{}, fmt.Errorf("is whole, but this contralay does not read the harness in it: %w", err)
	}
	return w, nil
}
