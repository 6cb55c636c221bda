/** The shell around every page: header, the page or what stands in its way, and the foot. */
import { Router } from 'wouter';
import { Failure } from './Failure.tsx';
import { Foot } from './Foot.tsx';
import { Header } from './Header.tsx';
import { useHashPath } from './hashAddress.ts';
import { Pages } from './Pages.tsx';
import { UpdateNotice } from './UpdateNotice.tsx';

export function App() {
  return (
    <Router hook={useHashPath}>
      <Header />
      <UpdateNotice place="top" />
      <Failure>
        <Pages />
      </Failure>
      <UpdateNotice place="foot" />
      <Foot />
    </Router>
  );
}
