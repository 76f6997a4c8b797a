// Package why is what an explanation of a figure is: a formula in words and its inputs,
// each of which may be explained in turn. What explains which figure is in shape and power;
// explain joins them and is what a screen asks.
package why
