// Package over is the phase of what goes over a bundle: tapes, braids, sheaths, sleeves,
// boots, transitions, and what they must pass and grip.
package over
