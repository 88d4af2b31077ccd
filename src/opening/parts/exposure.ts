import { z } from 'zod'
import { choice, flag, length, quantity } from '../fact.ts'

export const exposure = z
  .strictObject({
    terrain: choice('Terrain', ['urban', 'suburban', 'open', 'coastal'], { help: 'What stands between the wall and the wind.', from: 'detailReview' }),
    windSpeed: quantity('speed', 'Basic wind speed', { help: 'Of the load standard that the adopted code names.', from: 'detailReview', between: ['10 mph', '300 mph'] }),
    windPressure: quantity('arealLoad', 'Design wind pressure', { help: 'On the veneer at this opening.', from: 'detailReview', between: ['0 psf', '300 psf'] }),
    temperatureRange: quantity('temperatureDifference', 'Temperature range of the brick', { help: 'From the coldest to the hottest face of the wall, as a difference.', from: 'detailReview', between: ['0 °F', '300 °F'] }),
    freezesWet: flag('Brick freezes while wet', { help: 'True where wet brick freezes often enough to expand for it.', from: 'detailReview' }),
    rainIntensity: quantity('rainRate', 'Rain in the storm', { help: 'On a horizontal surface, over one hour.', from: 'detailReview', between: ['0 mm/h', '500 mm/h'] }),
    windSpeedInRain: quantity('speed', 'Wind while it rains', { help: 'Hourly mean, 10 m above open ground.', from: 'detailReview', between: ['0 m/s', '80 m/s'] }),
    windAngle: quantity('angle', 'Wind off the wall', { help: 'Between the wind and straight onto the wall; 0 when it blows straight on.', from: 'detailReview', between: ['0 deg', '180 deg'] }),
    airfieldIndex: quantity('rainDepth', 'Driving rain in the free wind', { help: 'Over a year or a spell, for this face of the building, before the factors of the wall.', from: 'detailReview', between: ['0 L/m2', '20000 L/m2'] }),
    convectiveRainShare: quantity('ratio', 'Rain from severe convective storms', { help: 'Share of the yearly rain; the wall index does not hold where it is large.', from: 'detailReview', between: ['0 %', '100 %'] }),
    topographySlope: quantity('ratio', 'Slope of the ground upwind', { help: 'Rise over run.', from: 'detailReview', between: ['0 %', '300 %'] }),
    obstructionDistance: length('Nearest obstacle of the same height', { help: 'A building, wall or trees in front of this face.', from: 'detailReview', between: ['0 in', '3000 ft'] }),
    wallFace: choice('Face of the building', ['twoStoryGable', 'threeStoryGable', 'multistoryTop', 'multistoryBelow', 'twoStoryEaves', 'threeStoryEaves', 'twoStoryFlatRoofTop', 'twoStoryFlatRoofBelow'], { help: 'What kind of wall the opening is in, for the share of the driving rain that reaches it.', from: 'detailReview' }),
    seismicDesignCategory: choice('Seismic design category', ['A', 'B', 'C', 'D0', 'D1', 'D2', 'D', 'E', 'F'], { help: 'As the adopted code assigns it.', from: 'detailReview' }),
    building: choice('Building', ['oneOrTwoFamily', 'townhouse', 'other'], { help: 'Some limits bind townhouses differently.', from: 'detailReview' }),
  })
  .meta({ id: 'ExposureInput', title: 'Exposure' })
