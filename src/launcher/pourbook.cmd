@echo off
rem Starts Pourbook. It needs Java 17 or newer: the one of JAVA_HOME, else the one on the PATH.
rem A workbook dropped on this file is estimated beside itself.
rem
rem The classes that a run loads are kept in an archive in lib (in the user's folder where lib cannot
rem be written), one for each Java, made in the background after the first estimate. An archive of
rem another Java, of a moved folder or of another version of the program is not used.
rem POURBOOK_NO_ARCHIVE=1 makes none.
setlocal
set "home=%~dp0"
set "jar=%home%lib\pourbook.jar"
set "java="
for %%j in (java.exe) do set "java=%%~$PATH:j"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if not defined java goto nojava

rem Which Java it is says a file beside it, so that it need not be asked.
set "version="
for %%j in ("%java%") do set "release=%%~dpj..\release"
if exist "%release%" for /f "usebackq tokens=1,2 delims==" %%a in ("%release%") do if "%%a"=="JAVA_VERSION" set "version=%%~b"
if defined POURBOOK_NO_ARCHIVE set "version="
set "major=0"
if defined version for /f "delims=." %%a in ("%version%") do set "major=%%a"
set "kind=jsa"
set "use=SharedArchiveFile"
if %major% geq 25 set "kind=aot"
if "%kind%"=="aot" set "use=AOTCache"

rem What the archive fits: this jar at this place. A file beside it tells.
for %%f in ("%jar%") do set "mark=%%~zf %%~tf %%~ff"
set "store=%home%lib"
if defined POURBOOK_TRAINING goto train
if defined version call :writable
set "archive=%store%\classes-%version%.%kind%"
rem Two quotes, not nothing: an empty side of a comparison ends the whole batch file.
set fits=""
if defined version if exist "%archive%" if exist "%archive%.of" set /p fits=<"%archive%.of"
set "archived="
if %fits%=="%mark%" set "archived=-XX:%use%=%archive%"

rem A small job is done before the slower, better compiler has paid.
set "quick=-XX:+IgnoreUnrecognizedVMOptions -XX:TieredStopAtLevel=1 -XX:C1MaxInlineSize=10 -XX:+UseSerialGC -Xmn24m"
set "command="
call :lookall %*
if defined archived goto withit
"%java%" -Xlog:disable -Xshare:auto %quick% -Djava.awt.headless=true -jar "%jar%" %*
set "status=%errorlevel%"
if not "%command%"=="estimate" goto done
if not defined version goto done
set "POURBOOK_TRAINING=%store%"
start "" /d "%home%." /b "%ComSpec%" /c .\pourbook.cmd >nul 2>&1 <nul
goto done

:withit
"%java%" -Xlog:disable -Xshare:auto %quick% "%archived%" -Djava.awt.headless=true -jar "%jar%" %*
set "status=%errorlevel%"

:done
rem Dropped on or double-clicked: leave the window open to be read.
echo %cmdcmdline% | find /i "/c " >nul && if "%~2"=="" pause
exit /b %status%

:nojava
echo pourbook: Java 17 or newer is needed; it was not found. 1>&2
exit /b 4

rem Not by a loop over all in brackets, which the bracket of jobs(1).xlsx would close.
:lookall
if "%~1"=="" exit /b 0
call :look "%~1"
shift
goto lookall

:look
if not defined command if "%~1"=="estimate" set "command=estimate"
if not defined command if /i "%~x1"==".xlsx" set "command=estimate"
set "first=%~1-"
if not defined command if not "%first:~0,1%"=="-" set "command=other"
if not exist "%~1" exit /b 0
set "kept=%~a1"
if "%kept:~0,1%"=="d" set "quick="
set "size=%~z1"
if not defined size set "size=0"
if %size% gtr 262144 set "quick="
exit /b 0

:writable
set "probe=%store%\classes-%random%.tmp"
echo. 2>nul >"%probe%"
if exist "%probe%" del "%probe%" & exit /b 0
set "store=%LOCALAPPDATA%\pourbook"
if not exist "%store%" mkdir "%store%" 2>nul
exit /b 0

rem Estimates the example, and keeps the classes that this loads. They are written under a name of
rem their own and then renamed, so that two that start together do not disturb one another.
:train
set "archive=%POURBOOK_TRAINING%\classes-%version%.%kind%"
set "made=%archive%.%random%"
set "order=%TEMP%\pourbook-%random%.xlsx"
set "example=-Djava.awt.headless=true -jar "%jar%" estimate "%home%share\example\jobs.xlsx" --prices "%home%share\example\prices.xlsx" -o "%order%""
if "%kind%"=="aot" "%java%" -Xlog:disable "-XX:AOTCacheOutput=%made%" %example%
if "%kind%"=="jsa" "%java%" -Xlog:disable "-XX:DumpLoadedClassList=%made%.list" %example%
if "%kind%"=="jsa" "%java%" -Xlog:disable -Xshare:dump -XX:+UseG1GC "-XX:SharedClassListFile=%made%.list" "-XX:SharedArchiveFile=%made%" -jar "%jar%"
del "%order%" "%made%.list" 2>nul
if not exist "%made%" exit /b 0
move /y "%made%" "%archive%" >nul 2>&1
if exist "%made%" del "%made%" & exit /b 0
>"%archive%.of" echo "%mark%"
exit /b 0
