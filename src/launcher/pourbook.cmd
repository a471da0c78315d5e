@echo off
rem Starts Pourbook. It needs Java 17 or newer: the one of JAVA_HOME, else the one on the PATH.
rem A workbook dropped on this file is estimated beside itself.
setlocal
set "jar=%~dp0lib\pourbook.jar"
set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
"%java%" -Xlog:disable -Xshare:auto -XX:TieredStopAtLevel=1 -XX:+UseSerialGC ^
  -Djava.awt.headless=true -jar "%jar%" %*
set "status=%errorlevel%"
if "%status%"=="9009" echo pourbook: Java 17 or newer is needed; it was not found. 1>&2
rem Dropped on or double-clicked: leave the window open to be read.
echo %cmdcmdline% | find /i "/c " >nul && if "%~2"=="" pause
exit /b %status%
