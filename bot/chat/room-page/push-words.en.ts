export const push = {
  title: "Calls while the page is closed",
  lead: "Your phone can call you when this page is closed or the phone is locked. The call goes encrypted through the phone maker's service, so it needs the internet. It holds the step and the tank, not your name.",
  notAllowed: "Your teacher has not allowed this for the class.",
  noWay:
    "This browser can't do it here. It needs https, and on an iPhone the page on the home screen: Share, then “Add to Home Screen”.",
  blocked: "Notifications are blocked for this page: allow them in the browser's settings for it.",
  turnOn: "Turn on",
  turnOff: "Turn off",
  isOn: "On for this device. Keep the page open all the same while you can: it has the buttons and the countdown.",
  isOff: "Off for this device.",
  failed: "The phone maker's service can't be reached. Is there internet? Try again.",
  wait: "One moment…",
  allowTitle: "Calls to closed pages",
  allowLead:
    "Not allowed: nothing leaves the school's network. Allowed: each student may let their phone be called while its page is closed: encrypted, through the phone maker's service, which learns that a call went out and when, and not what it says. It needs the internet.",
  allow: "Allow it for the class",
  forbid: "No longer allow it",
  allowed: "Allowed.",
  forbidden: "Not allowed.",
};
export type PushWords = typeof push;
