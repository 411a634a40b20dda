/** Files as Yett leaves them: for their owner alone where they tell of people, and never half. */
package yett.files;
