package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"
)

// percentiles reports p50, p95 and p99 in milliseconds.
func percentiles(b *testing.B, took []time.Duration) {
	slices.Sort(took)
	for _, p := range []int{50, 95, 99} {
		b.ReportMetric(float64(took[len(took)*p/100].Microseconds())/1000, fmt.Sprintf("p%d-ms", p))
	}
}

// BenchmarkKey is a key on the list of 130 wires to the first byte of the frame that
// shows it, through a pseudo-terminal.
func BenchmarkKey(b *testing.B) {
	s := start(b, 80, 24, nil, fileOf(b, "many.toml", manyWires()))
	s.laid()
	var took []time.Duration
	for n := 0; b.Loop(); n++ {
		before := len(s.sent())
		from := time.Now()
		s.press([]string{down, up}[n%2])
		for len(s.sent()) == before {
			<-s.drawn
		}
		took = append(took, time.Since(from))
		time.Sleep(2*quiet + time.Duration(n%7)*time.Millisecond) // out of step with the frames
	}
	percentiles(b, took)
}

// toFrame presses + and - in turn, each to the first byte of the frame that shows it, and
// rests in between, out of step with the frames.
func toFrame(b *testing.B, s *terminal, rest time.Duration) {
	var took []time.Duration
	for n := 0; b.Loop(); n++ {
		before := len(s.sent())
		from := time.Now()
		s.press([]string{"+", "-"}[n%2])
		for len(s.sent()) == before {
			<-s.drawn
		}
		took = append(took, time.Since(from))
		time.Sleep(rest + time.Duration(n%7)*time.Millisecond)
	}
	percentiles(b, took)
}

// BenchmarkChange is a key that changes a wire of 130, with everything that hangs on
// it and the journal, to the frame that shows it.
func BenchmarkChange(b *testing.B) {
	s := start(b, 80, 24, nil, fileOf(b, "many.toml", manyWires()))
	s.laid()
	s.press(right)
	s.until("options", func(screen string) bool { return strings.Contains(screen, " A  ") })
	s.toRow(optionRow("A"))
	s.press(enter) // laid, so that nothing waits for a lay-up
	s.see("not saved")
	s.press(left)
	s.see("WIRES")
	toFrame(b, s, 4*quiet)
}

// BenchmarkBurst is 200 keys in one write until the last of them is shown.
func BenchmarkBurst(b *testing.B) {
	s := start(b, 80, 24, nil, fileOf(b, "many.toml", manyWires()))
	s.laid()
	for b.Loop() {
		s.press(strings.Repeat(down, 100) + strings.Repeat(up, 100) + down)
		s.until("the row of the last key", func(screen string) bool { _, w := hand(screen); return strings.Contains(w, "w1 ") })
		s.press(up)
		s.until("the first row", func(screen string) bool { _, w := hand(screen); return strings.Contains(w, "w0 ") })
	}
}

// BenchmarkFirstFrame is from the start of the program to its first frame, on a
// terminal that answers nothing.
func BenchmarkFirstFrame(b *testing.B) {
	var took []time.Duration
	for b.Loop() {
		from := time.Now()
		s := start(b, 80, 24, nil, example)
		for !strings.Contains(s.sent(), "WIRES") {
			<-s.drawn
		}
		took = append(took, time.Since(from))
		s.close()
	}
	percentiles(b, took)
}

// BenchmarkIdle is the share of a processor that the bench takes while nobody presses
// a key, and the most memory it had after a tour of 130 wires and all their options.
func BenchmarkIdle(b *testing.B) {
	s := start(b, 120, 40, nil, fileOf(b, "many.toml", manyWires()))
	s.laid()
	for _, step := range steps[1:] {
		s.press(right)
		s.see(step)
	}
	for range 3 {
		s.changed(left)
	}
	s.until("two options", func(screen string) bool { return strings.Contains(screen, " B  ") })
	for range 12 {
		s.press(down)
		time.Sleep(quiet)
	}
	s.press("w")
	s.see("WHY")
	for b.Loop() {
		from := cpuTime(b, s.cmd.Process.Pid)
		const watch = 4 * time.Second
		time.Sleep(watch)
		b.ReportMetric(100*(cpuTime(b, s.cmd.Process.Pid)-from).Seconds()/watch.Seconds(), "cpu-%")
	}
	b.ReportMetric(peak(b, s), "peak-MB")
}

// peak is the most memory a program has had, in MB.
func peak(b *testing.B, s *terminal) float64 {
	status, err := os.ReadFile(fmt.Sprintf("/proc/%d/status", s.cmd.Process.Pid))
	if err != nil {
		b.Skip(err)
	}
	for _, l := range strings.Split(string(status), "\n") {
		if v, is := strings.CutPrefix(l, "VmHWM:"); is {
			kB, _ := strconv.Atoi(strings.Fields(v)[0])
			return float64(kB) / 1024
		}
	}
	b.Skip("the peak of memory is not told here")
	return 0
}

// BenchmarkManyEdits is 5,000 edits of 400 wires in 60 branches and then undoing them all: the
// seconds that each takes, and the most memory after each.
func BenchmarkManyEdits(b *testing.B) {
	const edits, burst = 5000, 100
	s := start(b, 80, 24, nil, fileOf(b, "large.toml", manyBranches()))
	s.see("WIRES")
	s.laid()
	for b.Loop() {
		from := time.Now()
		for k := 0; k < edits; k += burst {
			for n := range burst {
				s.press(fmt.Sprintf("%d.%02d%s", 1+k/burst%20, n, enter))
				if n < burst-1 {
					s.press([]string{down, up}[k/burst%2])
				}
			}
			last := fmt.Sprintf("set to %d.%02d A", 1+k/burst%20, burst-1)
			s.within(time.Minute, last, func(screen string) bool { return strings.Contains(screen, last) })
		}
		b.ReportMetric(time.Since(from).Seconds(), "edits-s")
		b.ReportMetric(peak(b, s), "edited-MB")
		from = time.Now()
		for range edits / burst {
			s.press(strings.Repeat(backspace, burst))
		}
		s.within(3*time.Minute, "the start", func(screen string) bool { return strings.Contains(screen, "undone; 0 more") })
		b.ReportMetric(time.Since(from).Seconds(), "undo-s")
		b.ReportMetric(peak(b, s), "peak-MB")
	}
}

// cpuTime is the processor time all threads of a process have run, as the scheduler
// counts it in nanoseconds: Documentation/scheduler/sched-stats of the Linux kernel.
func cpuTime(b *testing.B, pid int) time.Duration {
	files, _ := filepath.Glob(fmt.Sprintf("/proc/%d/task/*/schedstat", pid))
	if len(files) == 0 {
		b.Skip("no schedstat here")
	}
	total := time.Duration(0)
	for _, f := range files {
		if text, err := os.ReadFile(f); err == nil {
			ns, _ := strconv.Atoi(strings.Fields(string(text))[0])
			total += time.Duration(ns)
		}
	}
	return total
}

// manyBranches is a harness of 60 branches and 400 wires, laid: a trunk to a hub, eight
// sub-trunks, and legs.
func manyBranches() string {
	const wires, subs, legs = 400, 8, 51
	var b strings.Builder
	list := func(what string, n int) string {
		var out []string
		for k := range n {
			out = append(out, fmt.Sprintf("%q", fmt.Sprint(what, k)))
		}
		return "[" + strings.Join(out, ", ") + "]"
	}
	fmt.Fprintf(&b, "format = 1\n[harness]\nnumber = \"MANY\"\nsupply_v = 13.8\n[[termination]]\nid = \"P\"\ncavities = %s\n",
		list("", wires))
	for k := range legs {
		fmt.Fprintf(&b, "[[termination]]\nid = \"D%d\"\ncavities = %s\n", k, list("", wires/legs+1))
	}
	b.WriteString("[[breakout]]\nid = \"J\"\n")
	for k := range subs {
		fmt.Fprintf(&b, "[[breakout]]\nid = \"J%d\"\n", k)
	}
	through := map[string][]string{}
	for k := range wires {
		leg := k % legs
		id := fmt.Sprintf("w%d", k)
		for _, branch := range []string{"T", fmt.Sprintf("S%d", leg%subs), fmt.Sprintf("L%d", leg)} {
			through[branch] = append(through[branch], id)
		}
		fmt.Fprintf(&b, "[[wire]]\nid = %q\nfrom = \"P:%d\"\nto = \"D%d:%d\"\nspec = \"AS22759/32\"\nsize = %q\ncolour = \"%d\"\namps = "+
			"%.1f\n", id, k, leg, k/legs, []string{"22", "22", "20", "22", "16"}[k%5], k%10, 0.1+0.2*float64(k%7))
	}
	branch := func(id, from, to string) {
		fmt.Fprintf(&b, "[[branch]]\nid = %q\nfrom = %q\nto = %q\nlength_mm = 400.0\nmake = \"laid\"\n", id, from, to)
		for rest, n := through[id], 1; len(rest) > 0; n += 6 {
			if n == 7 {
				n = 6
			}
			k := min(n, len(rest))
			fmt.Fprintf(&b, "  [[branch.layer]]\n  of = [\"%s\"]\n", strings.Join(rest[:k], "\", \""))
			rest = rest[k:]
		}
	}
	branch("T", "P", "J")
	for k := range subs {
		branch(fmt.Sprintf("S%d", k), "J", fmt.Sprintf("J%d", k))
	}
	for k := range legs {
		branch(fmt.Sprintf("L%d", k), fmt.Sprintf("J%d", k%subs), fmt.Sprintf("D%d", k))
	}
	return b.String()
}

// BenchmarkLargeChange is a key that changes a wire of a large harness to the frame that
// shows it: a size or a current of 400 wires in 60 branches, in the trunk that holds
// them all; a current of the 182 wires of testdata/whole.toml.
func BenchmarkLargeChange(b *testing.B) {
	for _, c := range []struct {
		name, file string
		keys       []string
	}{
		{"size of 400", fileOf(b, "large.toml", manyBranches()), nil},
		{"current of 400", fileOf(b, "large.toml", manyBranches()), []string{enter, down}},
		{"current of 182", fileOf(b, "whole.toml", readFile(b, filepath.Join("..", "..", "testdata", "whole.toml"))),
			[]string{enter, down}},
	} {
		b.Run(c.name, func(b *testing.B) {
			s := start(b, 80, 24, nil, c.file)
			s.see("WIRES")
			s.laid()
			for _, k := range c.keys {
				s.changed(k)
			}
			toFrame(b, s, 6*quiet)
		})
	}
}
