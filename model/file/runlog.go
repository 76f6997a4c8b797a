package file

import (
	"bytes"
	"crypto/rand"
	"encoding/hex"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"sync"

	"github.com/gofrs/flock"

	"contralay/model"
	"contralay/model/runlog"
)

// RunLog is the log of what is built from one harness's file since the file was saved. It lies
// beside the file, as FILE.run, so that every bench on that file reads what the others ticked. Each
// line is written while no other bench writes, and is on disk before the next.
//
// A save folds the log into the file. The log goes away with it where no other bench has it open;
// else it stays, with a line that says so, and goes away with the last.
//
// Its methods may be called side by side.
type RunLog struct {
	path  string // of the log
	of    string // of the harness's file
	bench string // this bench, by chance

	mu     sync.Mutex
	id     string        // of the log; "" where there is none yet
	info   fs.FileInfo   // of the log that is read
	pos    int64         // so much of it is read
	lines  int           // and so many lines
	here   *flock.Flock  // held as long as this bench has the log open; nil where that cannot be
	base   string        // sum of the harness's file, as it was read or saved last
	state  []model.Build // as the log has them
	sent   []model.Build // as this bench has them
	design string        // sum of the harness of this bench, without what is built

	news    []runlog.Line // of others, not yet taken
	says    []string      // not yet said
	met     map[string]bool
	saved   *foldedIn // a save by another that is not yet taken
	fault   error     // a line that cannot be read: nothing is read after it, and nothing written
	barred  error     // why the log cannot be written; nil where it can
	missing bool      // something this bench has done did not come into the log
}

// foldedIn is a harness's file as another bench saved it.
type foldedIn struct {
	sum, design string
	builds      []model.Build
}

// Brought is what other benches have done since it was asked for last.
type Brought struct {
	Builds []model.Build // all builds as they are now
	Lines  []runlog.Line // what was done, in order
	Saved  bool          // another has saved this same harness: the file now has SavedAs
	As     []model.Build
	Says   []string // what has to be said once
}

// runName is what the log of a file is called.
func runName(target string) string { return target + ".run" }

// OpenRunLog reads the log beside a harness's file, where there is one, and puts it into the builds
// that the file has; base is the Sum of the file when it was read, d what it held. A log that holds what it must not
// is an error with its line: nobody may build on from half of what was done.
func OpenRunLog(path, base string, d Document) (*RunLog, error) {
	target, err := follow(path)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", path, err)
	}
	l := &RunLog{path: runName(target), of: target, bench: chance(), base: base, state: d.Harness.Builds,
		design: Design(d), met: map[string]bool{}}
	l.mu.Lock()
	defer l.mu.Unlock()
	all, tail, err := l.read()
	if err != nil {
		return nil, fmt.Errorf("%w. Mend that line, or take the file away: what it holds is then not built", err)
	}
	if l.barred = l.mayWrite(); tail > 0 {
		l.torn()
	}
	after := l.unfolded(all)
	l.state = runlog.Fold(d.Harness.Builds, after)
	l.sent = d.Harness.Builds
	if n := changes(after); n > 0 {
		l.says = append(l.says, fmt.Sprintf("what was done and not saved was taken from %s: %s", filepath.Base(l.path), entries(n)))
	}
	return l, nil
}

// WithRunLog is a document with what was done and is not saved, from the run log beside its file, and how
// many entries that are. base is the Sum of the file when it was read. Nothing is written, and half a line
// at its end counts as not done.
func WithRunLog(path, base string, d Document) (Document, int, error) {
	target, err := follow(path)
	if err != nil {
		return d, 0, fmt.Errorf("%s: %w", path, err)
	}
	l := &RunLog{path: runName(target), of: target, base: base}
	all, _, err := l.read()
	if err != nil {
		return d, 0, err
	}
	after := l.unfolded(all)
	d.Harness.Builds = runlog.Fold(d.Harness.Builds, after)
	return d, changes(after), nil
}

// Design is the sum of a harness without what is built from it.
func Design(d Document) string {
	d.Harness.Builds = nil
	return SumOf(Encode(Document{Harness: d.Harness}))[:16]
}

// chance is a name that no other bench has.
func chance() string {
	var b [4]byte
	_, _ = rand.Read(b[:]) // it never fails
	return hex.EncodeToString(b[:])
}

func entries(n int) string {
	if n == 1 {
		return "1 entry"
	}
	return fmt.Sprint(n, " entries")
}

func changes(lines []runlog.Line) int {
	n := 0
	for _, l := range lines {
		if l.Do == runlog.Change {
			n++
		}
	}
	return n
}

// unfolded are the lines that the harness's file does not have yet. Where its sum is that of a save
// the lines after that; else, for somebody has written it since by other means, those after the last
// save.
func (l *RunLog) unfolded(all []runlog.Line) []runlog.Line {
	from := 0
	for k := range all {
		if all[k].Do == runlog.Saved {
			from = k + 1
		}
	}
	for k := range all {
		if (all[k].Do == runlog.Saved || all[k].Do == runlog.Saving) && all[k].Sum == l.base {
			from = k + 1
		}
	}
	return all[from:]
}

// mayWrite tells whether the log can be written here, without a trace.
func (l *RunLog) mayWrite() error {
	if _, err := os.Lstat(l.path); errors.Is(err, fs.ErrNotExist) {
		return nil // it is seen once there is something to write
	}
	return Alone(l.path, func() error {
		f, err := os.OpenFile(l.path, os.O_WRONLY|os.O_APPEND, 0)
		if err == nil {
			err = f.Close()
		}
		return err
	})
}

// torn takes the half line away that a bench left which was killed while it wrote it: no screen had
// shown that as done.
func (l *RunLog) torn() {
	err := Alone(l.path, func() error {
		all, tail, err := l.read()
		l.keepNews(all)
		if err == nil && tail > 0 {
			err = os.Truncate(l.path, l.pos)
		}
		return err
	})
	says := fmt.Sprintf("the last line of %s is half written, for a bench was killed. It counts as not done", filepath.Base(l.path))
	if err != nil && l.barred == nil {
		says += ": " + err.Error()
	}
	l.says = append(l.says, says)
}

// read reads what has come to the log since, and how many bytes of a last line are not whole yet.
func (l *RunLog) read() (all []runlog.Line, tail int, err error) {
	if l.fault != nil {
		return nil, 0, l.fault
	}
	info, err := os.Stat(l.path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		l.forget()
		return nil, 0, nil
	case err != nil:
		return nil, 0, err
	}
	if l.info != nil && (!os.SameFile(info, l.info) || info.Size() < l.pos) { // another log has come in its place
		l.forget()
	}
	if l.id != "" && info.Size() == l.pos {
		return nil, 0, nil
	}
	if err := ordinary(l.path, info, "the run log", runlog.MostBytes); err != nil {
		return nil, 0, fmt.Errorf("cannot read the run log: %w", err)
	}
	text, err := l.from(l.pos)
	if err != nil {
		return nil, 0, fmt.Errorf("cannot read the run log: %w", err)
	}
	l.info = info
	for {
		line, rest, whole := bytes.Cut(text, []byte("\n"))
		if !whole {
			return all, len(text), nil
		}
		if l.id == "" {
			l.id, _, err = runlog.ReadFirst(line)
		} else {
			var one runlog.Line
			if one, err = runlog.Decode(line); err == nil {
				all = append(all, one)
			}
		}
		if err != nil {
			l.fault = fmt.Errorf("%s, line %d: %w", l.path, l.lines+1, err)
			return all, 0, l.fault
		}
		l.pos, l.lines, text = l.pos+int64(len(line))+1, l.lines+1, rest
	}
}

func (l *RunLog) from(pos int64) ([]byte, error) {
	f, err := os.Open(l.path)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	if _, err := f.Seek(pos, io.SeekStart); err != nil {
		return nil, err
	}
	return io.ReadAll(io.LimitReader(f, runlog.MostBytes+1))
}

// forget begins with no log.
func (l *RunLog) forget() {
	l.leave()
	l.id, l.info, l.pos, l.lines = "", nil, 0, 0
}

// leave gives up the place of this bench at the log.
func (l *RunLog) leave() {
	if l.here != nil {
		_ = l.here.Unlock()
		l.here = nil
	}
}

// join takes a place at the log, so that nobody takes it away. Where a lock on a file keeps others
// from writing to it there is no such place, and the log stays.
func (l *RunLog) join() {
	if l.here != nil || l.id == "" || runtime.GOOS == "windows" {
		return
	}
	if here := flock.New(l.path, flock.SetFlag(os.O_RDONLY)); here != nil {
		if got, err := here.TryRLock(); err == nil && got {
			l.here = here
		}
	}
}

// alone reports whether no other bench has the log open.
func (l *RunLog) alone() bool {
	if l.here == nil {
		return false
	}
	got, err := l.here.TryLock()
	if err == nil && got {
		return true
	}
	l.leave() // trying may have given it up
	l.join()
	return false
}

// keepNews puts lines that were read into the state of the log, and remembers those of others.
func (l *RunLog) keepNews(all []runlog.Line) {
	if len(all) == 0 {
		return
	}
	l.join()
	for k := range all {
		one := all[k]
		l.state = runlog.Fold(l.state, all[k:k+1])
		switch {
		case one.Bench == l.bench:
		case one.Do == runlog.Saved:
			l.saved = &foldedIn{one.Sum, one.Design, l.state}
		case one.Do != runlog.Saving:
			l.news = append(l.news, one)
		}
	}
}

// Look reads what other benches wrote. It reports whether there is something to take.
func (l *RunLog) Look() bool {
	l.mu.Lock()
	defer l.mu.Unlock()
	had := l.fault != nil
	all, _, err := l.read()
	l.keepNews(all)
	l.join()
	if err != nil && !had {
		l.says = append(l.says, "what other benches tick is no longer seen: "+err.Error())
	}
	return len(l.news)+len(l.says) > 0 || l.saved != nil
}

// Take is what other benches have done since. From then on the bench has it too.
func (l *RunLog) Take() Brought {
	l.mu.Lock()
	defer l.mu.Unlock()
	out := Brought{Builds: l.state, Lines: l.news, Says: l.says}
	if l.missing { // what this bench has done and the log has not stays
		out.Builds = runlog.Fold(l.sent, l.news)
	}
	for _, one := range l.news {
		if one.Design != "" && l.design != "" && one.Design != l.design && !l.met[one.Design] {
			l.met[one.Design] = true
			out.Says = append(out.Says, "another bench builds from this file with changes that are not here. Save there, then open it "+
				"again here")
		}
	}
	if s := l.saved; s != nil && s.design == l.design {
		out.Saved, out.As, l.base = true, s.builds, s.sum
	}
	l.sent, l.news, l.says, l.saved = out.Builds, nil, nil, nil
	return out
}

// Builds are all builds, as the log has them.
func (l *RunLog) Builds() []model.Build {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.state
}

// Base is the sum of the harness's file as this bench knows it.
func (l *RunLog) Base() string {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.base
}

// Mark names the log that has all that this bench has done; "" where none has.
func (l *RunLog) Mark() string {
	l.mu.Lock()
	defer l.mu.Unlock()
	if l.missing {
		return ""
	}
	return l.id
}

// Refuses is why nothing may be ticked here: another bench builds from the file, and the log cannot
// be written, or not be read. It is "" where it may.
func (l *RunLog) Refuses() string {
	l.mu.Lock()
	defer l.mu.Unlock()
	switch {
	case l.fault != nil:
		return "nothing can be ticked: " + l.fault.Error()
	case l.id != "" && l.barred != nil:
		return fmt.Sprintf("nothing can be ticked here: another bench builds from this file, and %s cannot be written: %v",
			filepath.Base(l.path), l.barred)
	}
	return ""
}

// Append brings what this bench has changed to the log. design is the sum of its harness without
// what is built. On an error it is tried again the next time; the bench goes on.
func (l *RunLog) Append(builds []model.Build, design string) error {
	l.mu.Lock()
	defer l.mu.Unlock()
	l.design = design
	lines := runlog.Between(l.sent, builds)
	if len(lines) == 0 {
		return nil
	}
	if l.fault != nil {
		return l.fault
	}
	err := Alone(l.path, func() error { return l.write(lines) })
	l.missing, l.barred = err != nil, err
	if err != nil {
		return fmt.Errorf("other benches do not see what is ticked here: %w", err)
	}
	l.sent = builds
	return nil
}

// write appends lines, in the name of this bench. Nobody else writes meanwhile.
func (l *RunLog) write(lines []runlog.Line) error {
	all, tail, err := l.read()
	l.keepNews(all)
	if err != nil {
		return err
	}
	made := l.id == ""
	flags := os.O_WRONLY | os.O_APPEND
	if made {
		flags |= os.O_CREATE
	}
	f, err := os.OpenFile(l.path, flags, newMode)
	if err != nil {
		return err
	}
	defer f.Close()
	if tail > 0 {
		if err := f.Truncate(l.pos); err != nil {
			return err
		}
		l.says = append(l.says, fmt.Sprintf("the last line of %s was half written, for a bench was killed. It counts as not done",
			filepath.Base(l.path)))
	}
	for k := range lines {
		lines[k].Bench, lines[k].Design = l.bench, l.design
	}
	text := runlog.Encode(lines)
	if made {
		text = append(runlog.First(chance(), l.base), text...)
	}
	if _, err := f.Write(text); err != nil {
		_ = f.Truncate(l.pos) // no half line: nobody has seen it as done
		return err
	}
	if err := f.Sync(); err != nil {
		_ = f.Truncate(l.pos)
		return err
	}
	if all, _, err = l.read(); err != nil {
		return err
	}
	l.keepNews(all)
	if made {
		return syncFolder(filepath.Dir(l.path))
	}
	return nil
}

// Fold writes a harness to its file by save, with all that the log has, and says so in the log. It is
// the harness that was written. What is built then stands in the file alone, where no other bench
// has the log open.
func (l *RunLog) Fold(d Document, save func(Document) error) (Document, error) {
	l.mu.Lock()
	defer l.mu.Unlock()
	if l.fault != nil {
		return d, l.fault
	}
	if _, err := os.Lstat(l.path); l.id == "" && errors.Is(err, fs.ErrNotExist) {
		err := save(d)
		l.base = SumOf(Encode(d))
		return d, err
	}
	began := false
	var saving error
	err := Alone(l.path, func() error {
		all, _, err := l.read()
		if err != nil {
			return err
		}
		l.keepNews(all)
		d.Harness.Builds = runlog.Fold(l.state, runlog.Between(l.sent, d.Harness.Builds))
		sum := SumOf(Encode(d))
		if err := l.write([]runlog.Line{{Do: runlog.Saving, Sum: sum}}); err != nil {
			return err
		}
		began, saving = true, save(d)
		if saving != nil && !errors.As(saving, new(NotOnDisk)) {
			return nil
		}
		l.base, l.missing = sum, false
		if !slices.EqualFunc(l.sent, d.Harness.Builds, func(a, b model.Build) bool { return model.Alike(&a, &b) }) {
			l.saved = &foldedIn{sum, l.design, d.Harness.Builds}
		}
		l.state = d.Harness.Builds
		if l.alone() {
			err = os.Remove(l.path)
			l.forget()
			return err
		}
		return l.write([]runlog.Line{{Do: runlog.Saved, Sum: sum}})
	})
	if !began {
		return d, fmt.Errorf("the run log cannot be folded into it: %w", err)
	}
	return d, saving
}

// Close gives the log up. One that the file has wholly goes away with the last bench; so does one
// whose bench was left without saving, where forget says so and nobody else builds from it.
func (l *RunLog) Close(forget bool) {
	l.mu.Lock()
	defer l.mu.Unlock()
	all, _, err := l.read()
	l.keepNews(all)
	l.join()
	if err != nil || l.id == "" || !l.alone() {
		l.leave()
		return
	}
	if forget || l.isFolded() {
		os.Remove(l.path)
	}
	l.leave()
}

// isFolded reports whether the file has all of the log.
func (l *RunLog) isFolded() bool {
	again := &RunLog{path: l.path, base: Sum(l.of)}
	all, tail, err := again.read()
	return err == nil && tail == 0 && changes(again.unfolded(all)) == 0
}
