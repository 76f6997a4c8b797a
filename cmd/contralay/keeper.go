package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"sync"
	"time"

	"contralay/model/file"
	"contralay/ui/bench/desk"
)

// keeper is where the unsaved work of a bench goes: a journal in the user's state
// folder; where there can be none, a file beside the harness when it is cut off.
type keeper struct {
	mu    sync.Mutex
	dir   string
	name  string // the harness's file; "" until it has one
	j     *file.Journal
	jerr  error // why there is no journal
	now   func() time.Time
	base  string // Sum of the harness's file as it was loaded or saved last, whether there is a journal or not
	last  file.Document
	dirty bool
}

func openKeeper(name string, w world) *keeper {
	file.SweepBeside(name)
	k := &keeper{name: name, now: w.now, base: file.Sum(name)}
	k.dir, k.jerr = stateDir(w)
	if name != "" { // the lock tells a second bench; without a file nothing is written before there is work
		k.open()
	}
	return k
}

func (k *keeper) open() {
	if k.dir != "" && k.jerr == nil {
		k.j, k.jerr = file.OpenJournal(k.dir, k.name, k.base)
	}
}

// keep takes the harness after each change.
func (k *keeper) keep(d file.Document, dirty bool) error {
	k.mu.Lock()
	defer k.mu.Unlock()
	k.last, k.dirty = d, dirty
	if dirty && k.j == nil {
		k.open()
	}
	if k.j == nil {
		if dirty {
			return k.jerr
		}
		return nil
	}
	if !dirty {
		k.j.Clear()
		return nil
	}
	k.jerr = k.j.Keep(d, k.now())
	return k.jerr
}

// save writes the harness, and lets the journal go on with the file it went to.
func (k *keeper) save(path string, d file.Document) error {
	if err := keepRevision(path, d); err != nil {
		return err
	}
	err := file.Save(path, d)
	if !errors.As(err, new(file.NotOnDisk)) && err != nil { // else it is there, and a power cut may take it away
		return err
	}
	k.mu.Lock()
	defer k.mu.Unlock()
	k.dirty, k.base = false, file.SumOf(file.Encode(d))
	if k.j != nil {
		k.j.Saved(k.base)
	}
	if path == k.name {
		return err
	}
	if k.j != nil {
		k.j.Close()
	}
	k.name, k.j, k.jerr = path, nil, nil
	k.open()
	return err
}

// changed reports whether somebody else wrote the file the bench is on, or took it away: what it
// holds is compared, for another file may have the same size and time.
func (k *keeper) changed(path string) bool {
	k.mu.Lock()
	defer k.mu.Unlock()
	return path == k.name && file.Sum(path) != k.base
}

// discard forgets what was not saved: the person chose so.
func (k *keeper) discard() {
	k.mu.Lock()
	defer k.mu.Unlock()
	if k.j != nil {
		k.j.Clear()
	}
}

// rescue says where the unsaved work is after the bench was cut off; "" where all
// was saved. Without a journal it goes beside the harness, under a name that is
// free: what an earlier stop left there may still be wanted.
func (k *keeper) rescue() (string, error) {
	k.mu.Lock()
	defer k.mu.Unlock()
	if !k.dirty {
		return "", nil
	}
	if k.j != nil && k.jerr == nil {
		open := "contralay"
		if k.name != "" {
			open += " " + k.name
		}
		return "Your unsaved work is kept, and offered when you open it again: " + open, nil
	}
	to := strings.TrimSuffix(k.name, ".toml")
	if to == "" {
		to = "contralay"
	}
	for n := 1; ; n++ {
		free := to + ".recovered.toml"
		if n > 1 {
			free = fmt.Sprintf("%s.recovered-%d.toml", to, n)
		}
		if _, err := os.Lstat(free); errors.Is(err, fs.ErrNotExist) {
			return "Your unsaved work is in " + free, file.Save(free, k.last)
		} else if err != nil {
			return "", err
		}
	}
}

func (k *keeper) close() {
	k.mu.Lock()
	defer k.mu.Unlock()
	if k.j != nil {
		k.j.Close()
		k.j = nil
	}
}

// unsaved is what earlier benches left behind on a file, what cannot be read of it, and a word
// about one that is at work on it now.
func unsaved(name string, d file.Document, w world) (left []desk.Left, unread []desk.Unread, notice string) {
	dir, err := stateDir(w)
	if err != nil {
		return nil, nil, ""
	}
	works, broken, busy := file.Left(dir, name)
	for _, u := range broken {
		unread = append(unread, desk.Unread{Path: u.Path, Says: u.Says, Discard: u.Discard})
	}
	now := file.Sum(name)
	for _, k := range works {
		says := file.Differences(d, k.Doc)
		if len(says) == 0 { // saved after all
			_ = k.Discard()
			continue
		}
		left = append(left, desk.Left{Doc: k.Doc, When: k.When.Local().Format("2 January 2006 15:04"), Changed: name != "" && k.Base != now,
			Says: says, Discard: k.Discard})
	}
	// The journal of this bench is open already and counts as one.
	if busy > 1 && name != "" {
		notice = fmt.Sprintf("Another bench has %s open. The one that saves last is asked first.", filepath.Base(name))
	}
	return left, unread, notice
}

// firstStart reports whether no bench has been at work here before.
func firstStart(w world) bool {
	dir, err := stateDir(w)
	if err != nil {
		return true
	}
	_, err = os.Lstat(dir)
	return errors.Is(err, fs.ErrNotExist)
}

// stateDir is the user's folder for state, by the XDG base directory rules.
func stateDir(w world) (string, error) {
	if d := w.env("XDG_STATE_HOME"); filepath.IsAbs(d) {
		return filepath.Join(d, "contralay"), nil
	}
	if runtime.GOOS == "windows" || runtime.GOOS == "darwin" {
		d, err := os.UserCacheDir()
		return filepath.Join(d, "contralay"), err
	}
	if h := w.env("HOME"); filepath.IsAbs(h) {
		return filepath.Join(h, ".local", "state", "contralay"), nil
	}
	return "", errors.New("neither XDG_STATE_HOME nor HOME is set")
}
