package file

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"sync"
	"syscall"
	"time"

	"github.com/gofrs/flock"
)

// Journal keeps the unsaved work of one bench outside the harness's own file, so
// that a kill, a power cut or a folder that is gone costs nothing that was done.
// Every bench has a file of its own, and a lock beside it as long as it lives;
// work without a living lock was left behind.
//
// There are two files, for a disk takes longer than a key may: the newest work, which outlives
// the program, and the last one that is surely on disk and outlives the machine. The newest
// takes the place of the other once it is on disk too, and not before.
//
// A Journal is used from one goroutine.
type Journal struct {
	lock *flock.Flock
	path string // the work that is surely on disk
	of   string // the harness's file, absolute; "" where it has none yet
	base string // Sum of that file as it was read or saved last
	sync chan struct{}
	done chan struct{}

	mu   sync.Mutex // of what follows, and of the two files
	held bool       // there is work in the journal
	err  error      // why the last work did not come to disk

	flush func(*os.File) error // brings a file to disk
}

// firstLine names the format of a journal.
const (
	firstWords = "contralay unsaved work "
	version    = "1"
	firstLine  = firstWords + version
)

// What is added to the name of a place: the newest work, the file it is written to, the lock.
const (
	newest  = ".new"
	half    = ".tmp"
	locking = ".lock"
)

// mostSlots bounds the benches on one harness, living and dead.
const mostSlots = 99

// OpenJournal takes a free place in dir for work on the harness's file, "" for a
// harness without one; base is the Sum of that file as it was loaded. dir is made where it is
// not there.
func OpenJournal(dir, harness, base string) (*Journal, error) {
	if err := os.MkdirAll(dir, 0o700); err != nil {
		return nil, err
	}
	of := canonical(harness)
	for n := 1; n <= mostSlots; n++ {
		path := slot(dir, of, n)
		l, got, err := lock(path + locking)
		if err != nil {
			return nil, err
		}
		if !got {
			continue
		}
		os.Remove(path + half)                   // its writer is gone
		if exists(path) || exists(path+newest) { // left behind by a bench that is gone: not ours to write over
			release(l)
			continue
		}
		j := &Journal{lock: l, path: path, of: of, base: base, sync: make(chan struct{}, 1), done: make(chan struct{}),
			flush: (*os.File).Sync}
		go j.toDisk()
		return j, nil
	}
	return nil, fmt.Errorf("%d benches have left unsaved work on %s. Open it, and take or discard that work first", mostSlots, harness)
}

func exists(path string) bool {
	_, err := os.Lstat(path)
	return !errors.Is(err, fs.ErrNotExist) && !errors.Is(err, syscall.ENOTDIR) // the folder may be a file
}

// lock takes a lock file, and makes it. Another that gave it up at that moment took the file
// away with it: a lock on a file that is gone keeps nobody out.
func lock(path string) (l *flock.Flock, got bool, err error) {
	for {
		l = flock.New(path)
		if got, err = l.TryLock(); err != nil || !got {
			return nil, false, err
		}
		have, err := l.Stat()
		if there, err2 := os.Stat(path); err == nil && err2 == nil && os.SameFile(have, there) {
			return l, true, nil
		}
		_ = l.Unlock()
	}
}

// release gives a lock up, and takes its file away first.
func release(l *flock.Flock) {
	os.Remove(l.Path())
	_ = l.Unlock()
}

// Keep makes d the work in the journal. When it returns, the death of the program
// loses nothing of it; the death of the machine loses nothing that is some
// hundredths of a second old.
//
// log names the run log that has what is built too; "" where none has.
func (j *Journal) Keep(d Document, when time.Time, log string) error {
	body := Encode(d)
	var b strings.Builder
	fmt.Fprintf(&b, "%s\nof %s\nbase %s\nwhen %s\nsum %s\n", firstLine, strconv.Quote(j.of), j.base, when.Format(time.RFC3339),
		SumOf(body))
	if log != "" {
		fmt.Fprintf(&b, "log %s\n", log)
	}
	b.WriteByte('\n')
	b.Write(body)
	temp := j.path + half
	if err := os.WriteFile(temp, []byte(b.String()), 0o600); err != nil {
		os.Remove(temp)
		return err
	}
	j.mu.Lock()
	defer j.mu.Unlock()
	if err := os.Rename(temp, j.path+newest); err != nil {
		os.Remove(temp)
		return err
	}
	j.held = true
	j.wake()
	return j.err
}

// wake has what changed brought to disk.
func (j *Journal) wake() {
	select {
	case j.sync <- struct{}{}:
	default: // one is waiting already and will see this, too
	}
}

// toDisk brings the journal to disk beside the work.
func (j *Journal) toDisk() {
	defer close(j.done)
	for range j.sync {
		err := j.settle()
		j.mu.Lock()
		j.err = err
		j.mu.Unlock()
	}
}

// settle brings the newest work to disk and then has it take the place of the work before.
func (j *Journal) settle() error {
	f, err := os.OpenFile(j.path+newest, os.O_RDWR, 0)
	switch {
	case errors.Is(err, fs.ErrNotExist): // it was saved meanwhile
		return syncFolder(filepath.Dir(j.path))
	case err != nil:
		return err
	}
	have, err := f.Stat()
	if err == nil {
		err = j.flush(f)
	}
	f.Close()
	if err != nil {
		return err
	}
	j.mu.Lock()
	now, err := os.Stat(j.path + newest)
	if err == nil && os.SameFile(have, now) { // else newer work came, and will be brought to disk next
		err = os.Rename(j.path+newest, j.path)
	} else {
		err = nil
	}
	j.mu.Unlock()
	if err != nil {
		return err
	}
	return syncFolder(filepath.Dir(j.path))
}

// Clear empties the journal: the harness is as its file has it.
func (j *Journal) Clear() {
	j.mu.Lock()
	defer j.mu.Unlock()
	if j.held {
		os.Remove(j.path + newest)
		os.Remove(j.path)
		j.held = false
		j.wake()
	}
}

// Rebase says that another bench saved the harness's file, with all that this one had of it.
func (j *Journal) Rebase(base string) { j.base = base }

// Saved says that the harness now stands in its file as it is; base is the Sum of that.
func (j *Journal) Saved(base string) {
	j.Clear()
	j.base = base
}

// Close gives the place up. What is in the journal stays, and is on disk.
func (j *Journal) Close() {
	close(j.sync)
	<-j.done
	release(j.lock)
}

// slot is the n-th place for work on a file. The name shows which file it is; the
// sum tells two of one name apart.
func slot(dir, of string, n int) string {
	name := "unnamed"
	if of != "" {
		sum := sha256.Sum256([]byte(of))
		name = filepath.Base(of) + "-" + hex.EncodeToString(sum[:6])
	}
	return filepath.Join(dir, fmt.Sprintf("%s.%d.work", name, n))
}

// canonical is one name for a file however it is reached.
func canonical(path string) string {
	if path == "" {
		return ""
	}
	if abs, err := filepath.Abs(path); err == nil {
		path = abs
	}
	if dir, err := filepath.EvalSymlinks(filepath.Dir(path)); err == nil {
		path = filepath.Join(dir, filepath.Base(path))
	}
	if whole, err := filepath.EvalSymlinks(path); err == nil {
		return whole
	}
	return path
}
