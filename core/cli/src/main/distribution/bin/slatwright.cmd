@echo off
rem Starts Slatwright from wherever this file lies.
setlocal
set "home=%~dp0.."
if defined JAVA_HOME (
  set "java=%JAVA_HOME%\bin\java.exe"
) else (
  set "java=java.exe"
)
"%java%" --version >nul 2>&1
if errorlevel 1 (
  echo slatwright: needs Java 17 or newer on the PATH, or in JAVA_HOME 1>&2
  exit /b 2
)
"%java%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto -Djava.awt.headless=true "-Dslatwright.home=%home%" -cp "%home%\lib\*" org.slatwright.cli.Slatwright %*
exit /b %errorlevel%
