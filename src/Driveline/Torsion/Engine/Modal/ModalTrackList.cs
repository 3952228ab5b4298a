namespace Driveline.Torsion;

/// <summary>Which quantities are watched, by the states of the links and of the drive.</summary>
internal static class ModalTrackList
{
    public static Track Free(int row, int link, double scale, bool keepsTorque, bool keepsTwist) => new()
    {
        Row = row,
        Link = link,
        Scale = scale,
        Up = double.PositiveInfinity,
        Down = double.PositiveInfinity,
        KeepsTorque = keepsTorque,
        KeepsTwist = keepsTwist,
    };

    public static void OfLink(Mechanism m, RunState x, Plan plan, int l, ModalTracks into)
    {
        switch (x.Links[l])
        {
            case LinkState.Locked:
                Track torque = Free(ModalRow.Torque(m, l), l, 0, true, false);
                torque.Up = plan.Forward[l];
                torque.UpRate = plan.ForwardRate[l];
                torque.UpMeans = Crossing.SlipForward;
                torque.Down = plan.Reverse[l];
                torque.DownRate = plan.ReverseRate[l];
                torque.DownMeans = Crossing.SlipBackward;
                into.Add(torque);
                break;
            case LinkState.SlipForward:
                Track rate = Rate(m, x, l);
                rate.Down = 0;
                rate.DownMeans = Crossing.SlipEnd;
                into.Add(rate);
                if (m.SwingAngle[l] > 0 && !x.SwungBack[l])
                {
                    Track swing = Travel(m, x, l, m.SwingAngle[l]);
                    swing.Up = m.SwingAngle[l];
                    swing.UpMeans = Crossing.SwingEnd;
                    into.Add(swing);
                }
                else if (!double.IsPositiveInfinity(m.EndSlip[l]))
                {
                    Track cut = Travel(m, x, l, m.EndSlip[l]);
                    cut.Up = m.EndSlip[l];
                    cut.UpMeans = Crossing.CutThrough;
                    into.Add(cut);
                }

                break;
            case LinkState.SlipBackward:
                Track back = Rate(m, x, l);
                back.Up = 0;
                back.UpMeans = Crossing.SlipEnd;
                into.Add(back);
                break;
            case LinkState.Open:
                Track gap = Travel(m, x, l, x.Face[l]);
                gap.Up = x.Face[l];
                gap.UpMeans = Crossing.FacesMeet;
                gap.Down = double.IsPositiveInfinity(m.Backlash[l]) ? m.Backlash[l] : m.Backlash[l] - x.Face[l];
                gap.DownMeans = Crossing.ReverseFacesMeet;
                into.Add(gap);
                break;
            default:
                break;
        }
    }

    public static void OfDrive(Mechanism m, RunState x, ModalTracks into)
    {
        if (m.DriveRotor < 0 || (double.IsPositiveInfinity(m.DriveMost) && double.IsNegativeInfinity(m.DriveLeast)))
        {
            return;
        }

        // T = T₀ − K·ω: above the largest torque the speed is too low, below the least too high.
        Track speed = Free(ModalRow.Speed(m.DriveRotor), -1, Math.Abs(m.DriveAtRest) / m.DriveSlope, false, false);
        double lowest = (m.DriveAtRest - m.DriveMost) / m.DriveSlope;
        double highest = (m.DriveAtRest - m.DriveLeast) / m.DriveSlope;
        if (x.DriveLimit == 0)
        {
            speed.Up = highest;
            speed.UpMeans = Crossing.DriveLeast;
            speed.Down = -lowest;
            speed.DownMeans = Crossing.DriveMost;
        }
        else if (x.DriveLimit > 0)
        {
            speed.Up = lowest;
            speed.UpMeans = Crossing.DriveOnLine;
        }
        else
        {
            speed.Down = -highest;
            speed.DownMeans = Crossing.DriveOnLine;
        }

        into.Add(speed);
    }

    private static Track Rate(Mechanism m, RunState x, int l)
    {
        double speed = Math.Abs(x.Speed[m.From[l]]);
        return Free(
            ModalRow.SlipRate(m, l), l, m.To[l] < 0 ? speed : Math.Max(speed, Math.Abs(x.Speed[m.To[l]])), false, false);
    }

    private static Track Travel(Mechanism m, RunState x, int l, double place)
    {
        Track travel = Free(ModalRow.SlipRate(m, l), l, Math.Abs(place), false, false);
        travel.IsTravel = true;
        travel.Travelled = x.Slip[l];
        return travel;
    }
}
