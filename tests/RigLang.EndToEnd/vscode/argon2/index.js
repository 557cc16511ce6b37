const refuse = () => {
  throw new Error("The editor under test has no passwords.");
};
module.exports = { hash: refuse, verify: refuse };
