package file

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"

	"github.com/gofrs/flock"
)

// Journal keeps the unsaved work of one bench outside the harness's own file, so
// that a kill, a power cut or a folder that is gone costs nothing that was done.
// Every bench has a file of its own, and a lock beside it as long as it lives;
// work without a living lock was left behind.
//
// A Journal is used from one goroutine.
type Journal struct {
	lock *flock.Flock
	path string
	of   string // the harness's file, absolute; "" where it has none yet
	base string // Sum of that file as it was read or saved last
	sync chan struct{}
	done chan struct{}
	held bool // there is work in the journal
}

// Work is what a bench left behind unsaved.
type Work struct {
	Doc  Document
	When time.Time
	Base string // Sum of the harness's file when the work began
	path string
	lock string
}

// firstLine names the format of a journal.
const firstLine = "contralay unsaved work 1"

// mostSlots bounds the benches on one harness, living and dead.
const mostSlots = 99

// OpenJournal takes a free place in dir for work on the harness's file, "" for a
// harness without one. dir is made where it is not there.
func OpenJournal(dir, harness string) (*Journal, error) {
	if err := os.MkdirAll(dir, 0o700); err != nil {
		return nil, err
	}
	of := canonical(harness)
	for n := 1; n <= mostSlots; n++ {
		path := slot(dir, of, n)
		l := flock.New(path + ".lock")
		got, err := l.TryLock()
		if err != nil {
			return nil, err
		}
		if !got {
			continue
		}
		if _, err := os.Lstat(path); !errors.Is(err, fs.ErrNotExist) {
			_ = l.Unlock() // left behind by a bench that is gone: not ours to write over
			continue
		}
		j := &Journal{lock: l, path: path, of: of, base: Sum(harness), sync: make(chan struct{}, 1), done: make(chan struct{})}
		go j.toDisk()
		return j, nil
	}
	return nil, fmt.Errorf("%d benches have left unsaved work on %s. Open it, and take or discard that work first", mostSlots, harness)
}

// Keep makes d the work in the journal. When it returns, the death of the program
// loses nothing of it; the death of the machine loses nothing that is some
// hundredths of a second old.
func (j *Journal) Keep(d Document, when time.Time) error {
	body := Encode(d)
	sum := sha256.Sum256(body)
	var b strings.Builder
	fmt.Fprintf(&b, "%s\nof %s\nbase %s\nwhen %s\nsum %s\n\n", firstLine, strconv.Quote(j.of), j.base, when.Format(time.RFC3339),
		hex.EncodeToString(sum[:]))
	b.Write(body)
	temp := j.path + ".tmp"
	if err := os.WriteFile(temp, []byte(b.String()), 0o600); err != nil {
		os.Remove(temp)
		return err
	}
	if err := os.Rename(temp, j.path); err != nil {
		os.Remove(temp)
		return err
	}
	j.held = true
	select {
	case j.sync <- struct{}{}:
	default: // one is waiting already and will see this work, too
	}
	return nil
}

// toDisk brings the journal to disk beside the work, since that takes longer than
// a key may.
func (j *Journal) toDisk() {
	defer close(j.done)
	for range j.sync {
		if f, err := os.Open(j.path); err == nil {
			_ = f.Sync()
			f.Close()
			_ = syncFolder(filepath.Dir(j.path))
		}
	}
}

// Clear empties the journal: the harness is as its file has it.
func (j *Journal) Clear() {
	if j.held {
		os.Remove(j.path)
		j.held = false
	}
}

// Saved says that the harness now stands in its file as it is.
func (j *Journal) Saved() {
	j.Clear()
	j.base = Sum(j.of)
}

// Changed reports whether the harness's file is not what was read or saved last:
// somebody else wrote it, or took it away.
func (j *Journal) Changed() bool { return j.of != "" && Sum(j.of) != j.base }

// Close gives the place up. What is in the journal stays, and is on disk.
func (j *Journal) Close() {
	close(j.sync)
	<-j.done
	os.Remove(j.lock.Path())
	_ = j.lock.Unlock()
}

// Left is the work that benches which are gone left behind on the harness's file,
// newest first, and how many are at work on it now.
func Left(dir, harness string) (left []Work, busy int) {
	of := canonical(harness)
	for n := 1; n <= mostSlots; n++ {
		path := slot(dir, of, n)
		if _, err := os.Lstat(path + ".lock"); err == nil {
			l := flock.New(path + ".lock")
			got, err := l.TryLock()
			if err == nil && !got {
				busy++
				continue
			}
			_ = l.Unlock()
		}
		if w, err := readWork(path); err == nil {
			left = append(left, w)
		}
	}
	slices.SortStableFunc(left, func(a, b Work) int { return b.When.Compare(a.When) })
	return left, busy
}

// Discard takes left work away.
func (w Work) Discard() error {
	os.Remove(w.lock)
	return os.Remove(w.path)
}

// readWork reads a journal; one that is torn or of another kind is an error.
func readWork(path string) (Work, error) {
	text, err := os.ReadFile(path)
	if err != nil {
		return Work{}, err
	}
	head, body, ok := strings.Cut(string(text), "\n\n")
	lines := strings.Split(head, "\n")
	if !ok || len(lines) < 1 || lines[0] != firstLine {
		return Work{}, errors.New("this is not a journal")
	}
	w := Work{path: path, lock: path + ".lock"}
	sum := ""
	for _, l := range lines[1:] {
		switch name, value, _ := strings.Cut(l, " "); name {
		case "base":
			w.Base = value
		case "when":
			if w.When, err = time.Parse(time.RFC3339, value); err != nil {
				return Work{}, err
			}
		case "sum":
			sum = value
		}
	}
	if got := sha256.Sum256([]byte(body)); hex.EncodeToString(got[:]) != sum {
		return Work{}, errors.New("torn")
	}
	w.Doc, err = Parse([]byte(body), path)
	return w, err
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

// Sum tells one content of a file from another; "" where it cannot be read.
func Sum(path string) string {
	if path == "" {
		return ""
	}
	text, err := os.ReadFile(path)
	if err != nil {
		return ""
	}
	sum := sha256.Sum256(text)
	return hex.EncodeToString(sum[:])
}
