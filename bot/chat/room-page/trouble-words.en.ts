export const trouble = {
  forStudents:
    "The class's computer can write nothing down: its disk is full or failing. This phone goes on calling you by itself. Tell your teacher.",
  forStaff:
    "The disk of the class's computer is full or failing: nobody is called from here, and nothing is written down. Free some space on it now. Students' phones go on calling by themselves.",
  localCall: "From this phone's own clock: the class's computer can't write and calls nobody",
};
export type TroubleWords = typeof trouble;
