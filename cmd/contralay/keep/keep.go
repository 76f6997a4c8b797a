package keep

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

	"contralay/model"
	"contralay/model/file"
	"contralay/ui/bench/desk"
)

// Keeper is where the unsaved work of a bench goes: a journal in the user's state
// folder; where there can be none, a file beside the harness when it is cut off.
type Keeper struct {
	mu    sync.Mutex
	dir   string
	name  string // the harness's file; "" until it has one
	j     *file.Journal
	log   *file.RunLog // what is built, shared with other benches; nil without a file
	jerr  error        // why there is no journal
	now   func() time.Time
	base  string // Sum of the harness's file as it was loaded or saved last, whether there is a journal or not
	last  file.Document
	dirty bool

	design string // sum of the harness that was kept last, without what is built
	forget bool   // what was not saved was left by choice
}

// Open begins to keep the work on a harness's file, "" for one without; env is the environment, now the clock.
func Open(name string, env func(string) string, now func() time.Time) *Keeper {
	file.SweepBeside(name)
	k := &Keeper{name: name, now: now, base: file.Sum(name)}
	k.dir, k.jerr = stateDir(env)
	if name != "" { // the lock tells a second bench; without a file nothing is written before there is work
		k.open()
	}
	return k
}

// Share opens the run log beside the file, which holds d. A harness without a file has none.
func (k *Keeper) Share(d file.Document) (err error) {
	if k.name != "" {
		k.log, err = file.OpenRunLog(k.name, k.base, d)
	}
	return err
}

// WithLog is a harness as the run log has it.
func (k *Keeper) WithLog(d file.Document) file.Document {
	if k.log != nil {
		d.Harness.Builds = k.log.Builds()
	}
	return d
}

// Mark names the run log; "" where there is none.
func (k *Keeper) Mark() string {
	if k.log == nil {
		return ""
	}
	return k.log.Mark()
}

// Look reads what other benches wrote, and reports whether there is something to take.
func (k *Keeper) Look() bool {
	k.mu.Lock()
	log := k.log
	k.mu.Unlock()
	return log != nil && log.Look()
}

// Brought is what other benches have done since it was asked for last.
func (k *Keeper) Brought() file.Brought {
	k.mu.Lock()
	defer k.mu.Unlock()
	if k.log == nil {
		return file.Brought{}
	}
	out := k.log.Take()
	if out.Saved {
		k.base = k.log.Base()
		if k.j != nil {
			k.j.Rebase(k.base)
		}
	}
	return out
}

// Barred is why nothing may be ticked here; "" where it may.
func (k *Keeper) Barred() string {
	k.mu.Lock()
	defer k.mu.Unlock()
	if k.log == nil {
		return ""
	}
	return k.log.Refuses()
}

func (k *Keeper) open() {
	if k.dir != "" && k.jerr == nil {
		k.j, k.jerr = file.OpenJournal(k.dir, k.name, k.base)
	}
}

// Keep takes the harness after each change.
func (k *Keeper) Keep(d file.Document, dirty bool) error {
	k.mu.Lock()
	defer k.mu.Unlock()
	mark := ""
	var lerr error
	if k.log != nil { // first: what the journal says that the log has, it has
		if !model.SameDesign(&d.Harness, &k.last.Harness) || k.design == "" {
			k.design = file.Design(d)
		}
		lerr, mark = k.log.Append(d.Harness.Builds, k.design), k.log.Mark()
	}
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
	if k.jerr = k.j.Keep(d, k.now(), mark); k.jerr == nil {
		return lerr
	}
	return k.jerr
}

// Save writes the harness, and lets the journal go on with the file it went to.
func (k *Keeper) Save(path string, d file.Document) error {
	if err := keepRevision(path, d); err != nil {
		return err
	}
	write := func(d file.Document) error { return file.Save(path, d) }
	k.mu.Lock()
	log := k.log
	if path != k.name {
		log = nil
	}
	k.mu.Unlock()
	var err error
	if log != nil {
		d, err = log.Fold(d, write)
	} else {
		err = write(d)
	}
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
	if k.log != nil { // what was done is in the other file
		k.log.Close(true)
	}
	k.name, k.j, k.jerr, k.log = path, nil, nil, nil
	k.open()
	if shared := k.Share(d); err == nil {
		err = shared
	}
	return err
}

// Changed reports whether somebody else wrote the file the bench is on, or took it away: what it
// holds is compared, for another file may have the same size and time.
func (k *Keeper) Changed(path string) bool {
	k.mu.Lock()
	defer k.mu.Unlock()
	return path == k.name && file.Sum(path) != k.base
}

// Discard forgets what was not saved: the person chose so.
func (k *Keeper) Discard() {
	k.mu.Lock()
	defer k.mu.Unlock()
	if k.j != nil {
		k.j.Clear()
	}
	k.forget = true
}

// Rescue says where the unsaved work is after the bench was cut off; "" where all
// was saved. Without a journal it goes beside the harness, under a name that is
// free: what an earlier stop left there may still be wanted.
func (k *Keeper) Rescue() (string, error) {
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

func (k *Keeper) Close() {
	k.mu.Lock()
	defer k.mu.Unlock()
	if k.j != nil {
		k.j.Close()
		k.j = nil
	}
	if k.log != nil {
		k.log.Close(k.forget)
		k.log = nil
	}
}

// Unsaved is what earlier benches left behind on a file, what cannot be read of it, and a word
// about one that is at work on it now.
//
// What is built is taken from the run log, where that has it: log is its name, and d has what it says.
func Unsaved(name string, d file.Document, log string, env func(string) string) (left []desk.Left, unread []desk.Unread, notice string) {
	dir, err := stateDir(env)
	if err != nil {
		return nil, nil, ""
	}
	works, broken, busy := file.Left(dir, name)
	for _, u := range broken {
		unread = append(unread, desk.Unread{Path: u.Path, Says: u.Says, Discard: u.Discard})
	}
	now := file.Sum(name)
	for _, k := range works {
		if log != "" && k.Log == log {
			k.Doc.Harness.Builds = d.Harness.Builds
		}
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

// FirstStart reports whether no bench has been at work here before.
func FirstStart(env func(string) string) bool {
	dir, err := stateDir(env)
	if err != nil {
		return true
	}
	_, err = os.Lstat(dir)
	return errors.Is(err, fs.ErrNotExist)
}

// stateDir is the user's folder for state, by the XDG base directory rules.
func stateDir(env func(string) string) (string, error) {
	if d := env("XDG_STATE_HOME"); filepath.IsAbs(d) {
		return filepath.Join(d, "contralay"), nil
	}
	if runtime.GOOS == "windows" || runtime.GOOS == "darwin" {
		d, err := os.UserCacheDir()
		return filepath.Join(d, "contralay"), err
	}
	if h := env("HOME"); filepath.IsAbs(h) {
		return filepath.Join(h, ".local", "state", "contralay"), nil
	}
	return "", errors.New("neither XDG_STATE_HOME nor HOME is set")
}
