package main

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"html"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"runtime"
	"runtime/debug"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"contralay/model/shorttest"
)

// built is the program under test: this test binary, which is the program where asProgram is set. In the long form, for
// benchmarks and with the race detector, it is the program that people get, built once by TestMain.
var built string

// asProgram names the setting that makes this test binary the program.
const asProgram = "CONTRALAY_TEST_PROGRAM"

func TestMain(m *testing.M) { os.Exit(buildAndTest(m)) }

func buildAndTest(m *testing.M) int {
	if os.Getenv(panics) != "" { // the program with a fault in it
		return run(os.Args[1:], world{in: os.Stdin, out: os.Stdout, err: os.Stderr, env: os.Getenv, now: time.Now, wrap: faulty})
	}
	if os.Getenv(asProgram) != "" {
		main()
	}
	flag.Parse()
	name, drop, err := program(shorttest.Long() || flag.Lookup("test.bench").Value.String() != "" || raced())
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		return 1
	}
	defer drop()
	built = name
	// Most of these tests wait for a terminal and not for the machine: more of them go on at once than it has cores.
	if at := flag.Lookup("test.parallel"); at.Value.String() == at.DefValue {
		if err := at.Value.Set(strconv.Itoa(4 * runtime.GOMAXPROCS(0))); err != nil {
			fmt.Fprintln(os.Stderr, err)
			return 1
		}
	}
	return m.Run()
}

// raced reports whether this is run with the race detector, which would tell of what the terminal library does to itself.
func raced() bool {
	info, known := debug.ReadBuildInfo()
	return known && slices.Contains(info.Settings, debug.BuildSetting{Key: "-race", Value: "true"})
}

// program is the path of the program under test, and what takes it away again.
func program(byItself bool) (name string, drop func(), err error) {
	if !byItself {
		name, err = os.Executable()
		return name, func() {}, err
	}
	dir, err := os.MkdirTemp("", "contralay")
	if err != nil {
		return "", nil, err
	}
	drop, name = func() { os.RemoveAll(dir) }, filepath.Join(dir, "contralay")
	if out, err := exec.Command("go", "build", "-o", name, ".").CombinedOutput(); err != nil {
		drop()
		return "", nil, fmt.Errorf("go build: %w\n%s", err, out)
	}
	return name, drop, nil
}

// example is the small whole harness that every build must read.
var example = absolute(filepath.Join("..", "..", "testdata", "example.toml"))

func absolute(name string) string {
	p, err := filepath.Abs(name)
	if err != nil {
		return name
	}
	return p
}

// environ is all the program sees of the world: nothing of the tester's own
// settings or catalogue. Later entries win.
func environ(t testing.TB, more ...string) []string {
	t.Helper()
	home := t.TempDir()
	return append([]string{"PATH=" + os.Getenv("PATH"), "HOME=" + home, "XDG_CONFIG_HOME=" + home,
		"LANG=C.UTF-8", "TERM=xterm-256color", asProgram + "=1"}, more...)
}

// outcome is what a run without a terminal left behind.
type outcome struct {
	out, err string
	code     int
}

// longestRun bounds any single run: a hang must fail, not stall.
const longestRun = 20 * time.Second

// call runs the program without a terminal, stdin on standard input: within the test, whose own process
// is where a fault or a wrong exit would show. callBuilt shows the same of a program by itself.
func call(t *testing.T, stdin string, args ...string) outcome {
	t.Helper()
	return callIn(t, environ(t), stdin, args...)
}

// calling is held by the one call that works: the tests beside it read their terminals meanwhile.
var calling sync.Mutex

func callIn(t *testing.T, env []string, stdin string, args ...string) outcome {
	t.Helper()
	calling.Lock()
	defer calling.Unlock()
	in, typed := newPipe(t)
	out, outTo := newPipe(t)
	errs, errsTo := newPipe(t)
	settings := map[string]string{}
	for _, e := range env {
		key, value, _ := strings.Cut(e, "=")
		settings[key] = value
	}
	go func() { // may be left half read
		_, _ = io.WriteString(typed, stdin)
		typed.Close()
	}()
	code, says, complains := make(chan int, 1), allOf(out), allOf(errs)
	go func() {
		code <- run(args, world{in: in, out: outTo, err: errsTo, env: func(key string) string { return settings[key] }, now: time.Now})
		in.Close()
		outTo.Close()
		errsTo.Close()
	}()
	select {
	case c := <-code:
		o := outcome{<-says, <-complains, c}
		o.clean(t, args)
		return o
	case <-time.After(longestRun):
		t.Fatalf("%q did not end within %v", args, longestRun)
		return outcome{}
	}
}

func newPipe(t *testing.T) (r, w *os.File) {
	t.Helper()
	r, w, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	return r, w
}

// allOf is what comes through a pipe until it is closed.
func allOf(r *os.File) <-chan string {
	all := make(chan string, 1)
	go func() {
		text, _ := io.ReadAll(r)
		r.Close()
		all <- string(text)
	}()
	return all
}

// callBuilt runs the built program as a process of its own, without a terminal.
func callBuilt(t *testing.T, args ...string) outcome {
	t.Helper()
	cmd := exec.Command(built, args...)
	cmd.Env = environ(t)
	var out, errs bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &errs
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	late := time.AfterFunc(longestRun, func() { _ = cmd.Process.Kill() })
	err := cmd.Wait()
	if !late.Stop() {
		t.Fatalf("%q did not end within %v", args, longestRun)
	}
	var exit *exec.ExitError
	if err != nil && !errors.As(err, &exit) {
		t.Fatal(err)
	}
	o := outcome{out.String(), errs.String(), cmd.ProcessState.ExitCode()}
	o.clean(t, args)
	return o
}

// clean holds for every run without a terminal: no stack trace, no escape code.
func (o outcome) clean(t *testing.T, args []string) {
	t.Helper()
	for _, text := range []string{o.out, o.err} {
		if strings.Contains(text, "goroutine ") || strings.Contains(text, "panic:") {
			t.Errorf("%q ended in a stack trace:\n%s", args, text)
		}
		if strings.ContainsRune(text, '\x1b') {
			t.Errorf("%q wrote an escape code where there is no terminal: %q", args, text)
		}
	}
}

// refused checks wrong use: nothing on stdout, so many lines on stderr, exit 2.
func (o outcome) refused(t *testing.T, lines int, words ...string) {
	t.Helper()
	if o.code != 2 || o.out != "" || strings.Count(o.err, "\n") != lines || !strings.HasPrefix(o.err, "contralay: ") {
		t.Errorf("exit %d, stdout %q, stderr %q; want exit 2, nothing on stdout, %d line(s) on stderr that begin with the program's name",
			o.code, o.out, o.err, lines)
	}
	for _, w := range words {
		if !strings.Contains(o.err, w) {
			t.Errorf("stderr %q does not say %q", o.err, w)
		}
	}
}

// wordsOf is what a page of HTML says: its text without tags, each line break a blank.
func wordsOf(page string) string {
	page = regexp.MustCompile(`<br>|</div>`).ReplaceAllString(page, " ")
	page = html.UnescapeString(regexp.MustCompile(`<[^>]*>`).ReplaceAllString(page, ""))
	return strings.Join(strings.Fields(page), " ")
}

func readFile(t testing.TB, name string) string {
	t.Helper()
	b, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

// fileOf writes a file of the test's own.
func fileOf(t testing.TB, name, text string) string {
	t.Helper()
	p := filepath.Join(t.TempDir(), name)
	if err := os.WriteFile(p, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
	return p
}

// copyOfExample is the example where a test may save.
func copyOfExample(t *testing.T) string {
	t.Helper()
	return fileOf(t, "loom.toml", readFile(t, example))
}
